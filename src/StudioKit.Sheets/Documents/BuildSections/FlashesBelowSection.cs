using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>What holds the flashes under the panel, and where.</summary>
internal static class FlashesBelowSection
{
    // One flash is said by the order of assembly and the drawings.
    public static IEnumerable<Block> Supports(FramePlan frame)
    {
        if (frame.LowerFlashes.Count < 2)
        {
            yield break;
        }

        yield return new Heading("What holds the flashes below", 2);
        yield return new Table(
            [
                new Column("Flash"), new Column("Set-ups"), new Column("Held by"), new Column("Below the panel", ColumnKind.Right),
                new Column("From the left", ColumnKind.Right), new Column("From the front", ColumnKind.Right),
            ],
            [.. frame.LowerFlashes.Select(flash => new TableRow(
            [
                flash.Flash, string.Join(", ", flash.SetUps), HeldBy(flash), CutFormat.CutLength(flash.BelowPanel), CutFormat.CutLength(flash.FromLeft), CutFormat.CutLength(flash.FromFront),
            ]))]);
    }

    // What several set-ups have in the same place is drawn once, named after all of them.
    public static IEnumerable<Block> Places(Plan plan)
    {
        var places = plan.PanelLights.Where(light => light.Flashes.Count > 0)
            .Select(light => (light.SetUp, Drawing: FlashPlaceDrawing.Of(light)))
            .GroupBy(place => string.Join('\n', place.Drawing.Marks.OfType<Label>().Select(label => label.Text)), StringComparer.Ordinal).ToList();
        return places.Count == 0
            ? []
            : places.Select(Block (alike) => new DrawingBlock(alike.First().Drawing, Caption: $"{string.Join("; ", alike.Select(place => place.SetUp))}: {Sentence(alike.First().Drawing.Title)}"))
                .Prepend(new Heading("Where each flash below lies", 2));
    }

    private static string Sentence(string title) => char.ToLowerInvariant(title[0]) + title[1..];

    private static string HeldBy(FlashBelow flash) => flash.Support switch
    {
        FlashSupport.Cradle => $"its cradle, {flash.CradleJoint}",
        FlashSupport.SharedCradle => $"cradle {flash.CradleJoint}, the same place as another",
        FlashSupport.Ground => "the ground",
        _ => $"a stand of its own: {(flash.Fault is { } fault ? CradleText.Clause(fault) : "")}",
    };
}
