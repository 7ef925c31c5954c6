using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>The translucent sheet as the light sees it: flat, or flat in front and swept up in an arc at the back.</summary>
/// <remarks>
/// Its front edge lies half a <see cref="Depth"/> before the studio's middle. Where it is swept, <see cref="Depth"/> is the
/// length along the sheet, the last <see cref="SweptLength"/> of which bends up with <see cref="SweepRadius"/>.
/// </remarks>
public sealed record LightPanel
{
    /// <summary>Side across the camera's view.</summary>
    public required Length Width { get; init; }

    /// <summary>Side along the camera's view, measured along the sheet.</summary>
    public required Length Depth { get; init; }

    /// <summary>Ground to the underside of the flat part.</summary>
    public required Length Height { get; init; }

    /// <summary>Radius of the arc at the back; none for a flat panel.</summary>
    public Length? SweepRadius { get; init; }

    /// <summary>Length of the arc along the sheet; zero for a flat panel.</summary>
    public Length SweptLength { get; init; } = Length.Zero;

    /// <summary>Share of the light on the underside that leaves the top T [1]; above 0, at most 1.</summary>
    public double Transmittance { get; init; } = 0.5;

    /// <summary>Exponent s of the lobe in which direct light leaves the top, luminance ∝ cosˢ [1]; 0 is Lambertian.</summary>
    public double ScatterExponent { get; init; }

    /// <summary>Diffuse reflectance of the underside [1]; 0 to 0.99.</summary>
    public double UndersideReflectance { get; init; } = 0.35;

    /// <summary>Whether the back of the sheet is bent up.</summary>
    public bool IsSwept => SweepRadius is not null && SweptLength > Length.Zero;

    /// <summary>Where a place of the sheet's underside lies in the studio.</summary>
    /// <param name="place">Place on the sheet.</param>
    public Position At(PanelPlace place) => new PanelSurface(this).At(place.Across.Meters, place.AlongSheet.Meters);
}
