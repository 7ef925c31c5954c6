using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>What to set when the light changes: a row for each step that asks for something else, brightest first.</summary>
internal static class LightChanges
{
    public static Block Of(ExposurePlan now, ValueList<LightStep> steps, double sizePt) => new KeepTogether(new Table(
        [new Column("Light, EV"), new Column($"Meter at {now.Aperture.Nominal}, {now.Iso.Nominal}"), new Column("Then")],
        [.. steps.Select(step => new TableRow([Light(step), Reads(step), Then(now, step)]))],
        sizePt));

    private static string Light(LightStep step) => Range(AmbientText.Figure(step.Brightest), AmbientText.Figure(step.Darkest));

    private static string Reads(LightStep step) => Range(Short(step.ReadsInBrightest), Short(step.ReadsInDarkest)) + " s";

    private static string Range(string brightest, string darkest) => brightest == darkest ? brightest : $"{brightest} to {darkest}";

    private static string Short(ShutterSpeed shutter) => shutter.Mark;

    private static string Then(ExposurePlan now, LightStep step)
    {
        var promise = step.Advice.Promise;
        var edge = promise.Verdict.Verdict == Verdict.AtTheEdge && !step.IsPlanned ? ", at the edge" : "";
        var tripod = step.OnTripod is { } steady ? $"; {AdviceText.Of(now, steady, inShort: true)}" : "";
        return step.IsPlanned ? $"this card{tripod}"
            : promise.IsUsable ? AdviceText.Of(now, step.Advice, inShort: true) + edge + tripod
            : step.OnTripod is { } only ? AdviceText.Of(now, only, inShort: true)
            : step.Shade is { } shade ? $"shade by {AdviceText.Amount(shade)}"
            : promise.Verdict.Binding is { } limit ? LimitText.Of(limit) : "";
    }
}
