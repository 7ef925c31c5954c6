using System.Text;
using StudioKit.Planning;
using StudioKit.Sheets.Svg;

namespace StudioKit.Sheets.Documents;

/// <summary>Where the lights of one card stand and how the day goes, for whoever shows it and prints nothing.</summary>
public static class PlaceDrawings
{
    // As on a card of the larger sizes.
    private const string DayPlan = "day-plan.pdf";
    private const double Width = 104;
    private const double Height = 52;

    /// <summary>Both views of the lights, then the pages of the day.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="exposure">One of its exposures.</param>
    /// <returns>Each as SVG; without the first where no light stands about the subject, without the others where the kit has no date or place.</returns>
    /// <exception cref="ArgumentNullException">There is no plan or exposure.</exception>
    public static IReadOnlyList<string> Of(Plan plan, ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(exposure);

        var stands = plan.LightStands.Where(stand => stand.SetUp == exposure.SetUp && stand.Framing == exposure.Framing.Name).ToList();
        byte[][] lights = stands.Count == 0 ? [] : [SvgWriter.Write(LightPlaceDrawing.Of(stands, exposure.CameraPitches, exposure.OnPanel, Width, Height))];
        var day = SheetSet.Groups(plan, new SheetOptions()).Where(group => group.Name == DayPlan).SelectMany(group => group.Pages()).Select(page => page.Content);
        return [.. lights.Select(light => Encoding.UTF8.GetString(light)), .. day.Select(page => Encoding.UTF8.GetString(page.Span))];
    }
}
