using System.Globalization;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Says in words what a scale was worked out from, for the sidecar and its readers.</summary>
public static class ScaleBasisText
{
    /// <summary>One line: what the scale stands on, how the file came from it, and what to bear in mind.</summary>
    /// <param name="scale">The scale.</param>
    public static string Of(PictureScale scale)
    {
        ArgumentNullException.ThrowIfNull(scale);
        IEnumerable<string> parts = [Basis(scale.Basis), .. Making(scale.Making), .. Uncertainty(scale), .. scale.Caveats];
        return string.Join(" ", parts.Select(part => part.EndsWith('.') ? part : part + "."));
    }

    private static string Basis(ScaleBasis basis) => basis switch
    {
        ScaleBasis.Rule rule => $"Millimetre rule in {rule.File}",
        ScaleBasis.Framed framed => Framing(framed),
        _ => "Size of a pixel as given",
    };

    private static string Framing(ScaleBasis.Framed framed)
    {
        var name = framed.Framing.Length == 0 ? "" : $"Framing '{framed.Framing}' of kit '{framed.Kit}': ";
        var pixels = framed.CameraPixels is { } camera ? $" with {camera} pixels" : "";
        return string.Create(
            CultureInfo.InvariantCulture, $"{name}{(name.Length == 0 ? "Magnification" : "magnification")} {framed.Magnification:0.####}, sensor {framed.SensorWidth * 1000:0.###} mm wide{pixels}");
    }

    private static IEnumerable<string> Making(PictureMaking making)
    {
        if (making.IsCropped)
        {
            yield return "Cropped";
        }

        if (making.ResizedFrom is PixelDimensions before)
        {
            yield return $"Resized from {before} pixels";
        }
    }

    private static IEnumerable<string> Uncertainty(PictureScale scale) => scale.RelativeUncertainty is { } relative
        ? [string.Create(CultureInfo.InvariantCulture, $"Known to {100 * relative:0.0#} % (one standard deviation)")]
        : [];
}
