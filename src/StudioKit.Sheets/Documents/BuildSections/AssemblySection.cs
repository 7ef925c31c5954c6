using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Putting the frame up and packing it down.</summary>
internal static class AssemblySection
{
    public static IEnumerable<Block> Of(Plan plan, FramePlan frame)
    {
        if (frame.Assembly.Count == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading("Putting it up", 2);
        yield return new ItemList([.. frame.Assembly.Select(step => AssemblyText.Of(step, frame.Geometry))], ItemMarker.Number);
        yield return new Caution(
            $"This studio was checked for {(frame.Wind is { } wind ? LoadText.Of(wind) : "no wind")} at {plan.Kit.Site.Name}. Take it down when the wind rises above that or a storm is near; never stand under a swept sheet in wind. {UsualCautions.LocalRules}",
            "Wind");
        yield return new Caution(UsualCautions.Flash, "Flash");
        yield return new Heading("Packing down", 2);
        yield return new ItemList([.. frame.PackingDown.Select(AssemblyText.Of)], ItemMarker.Number);
    }
}
