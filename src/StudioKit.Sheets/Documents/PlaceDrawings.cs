using System.Text;
using StudioKit.Planning;
using StudioKit.Sheets.Svg;

namespace StudioKit.Sheets.Documents;

/// <summary>Where the lights of one card stand, for whoever shows it and prints nothing.</summary>
public static class PlaceDrawings
{
    // As on a card of the larger sizes.
    private const double Width = 104;
    private const double Height = 52;

    /// <summary>Both views.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="exposure">One of its exposures.</param>
    /// <returns>The drawing as SVG; empty where no light stands about the subject.</returns>
    /// <exception cref="ArgumentNullException">There is no plan or exposure.</exception>
    public static string Svg(Plan plan, ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(exposure);

        var stands = plan.LightStands.Where(stand => stand.SetUp == exposure.SetUp && stand.Framing == exposure.Framing.Name).ToList();
        return stands.Count == 0 ? "" : Encoding.UTF8.GetString(SvgWriter.Write(LightPlaceDrawing.Of(stands, exposure.CameraPitches, exposure.OnPanel, Width, Height)));
    }
}
