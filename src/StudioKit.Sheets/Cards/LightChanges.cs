using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>What to set when the light changes: a row for each step that asks for something else, brightest first.</summary>
internal static class LightChanges
{
    public static Block Of(ExposurePlan now, ValueList<LightStep> steps, double sizePt) => new KeepTogether(new Table(
        [new Column("Light, EV"), new Column($"Meter at {now.Aperture.Nominal}, {now.Iso.Nominal}"), new Column("Then")],
        [.. steps.Select(step => new TableRow([Light(step), Reads(step), LightStepText.Then(now, step, inShort: true)]))],
        sizePt));

    private static string Light(LightStep step) => Range(AmbientText.Figure(step.Brightest), AmbientText.Figure(step.Darkest));

    private static string Reads(LightStep step) => Range(Short(step.ReadsInBrightest), Short(step.ReadsInDarkest)) + " s";

    private static string Range(string brightest, string darkest) => brightest == darkest ? brightest : $"{brightest} to {darkest}";

    private static string Short(ShutterSpeed shutter) => shutter.Mark;
}
