using UnitsNet;

namespace StudioKit.Physics.Exposure;

/// <summary>A flash's guide number at full power, brought to ISO 100.</summary>
public readonly record struct GuideNumber
{
    /// <summary>Makes a guide number.</summary>
    /// <param name="atIso100">f-number times distance at ISO 100 and full power; &gt; 0 m.</param>
    /// <param name="zoom">Zoom setting it is quoted at, as focal length on a 36 mm × 24 mm sensor; none where the head has no zoom.</param>
    /// <exception cref="ArgumentOutOfRangeException">The guide number or the zoom is not above zero.</exception>
    public GuideNumber(Length atIso100, Length? zoom = null)
    {
        Guard.Positive(atIso100.Meters, nameof(atIso100));
        if (zoom is { } focalLength)
        {
            Guard.Positive(focalLength.Meters, nameof(zoom));
        }

        AtIso100 = atIso100;
        Zoom = zoom;
    }

    /// <summary>f-number times distance at ISO 100 and full power.</summary>
    public Length AtIso100 { get; }

    /// <summary>Zoom setting the number is quoted at, as focal length on a 36 mm × 24 mm sensor.</summary>
    public Length? Zoom { get; }
}
