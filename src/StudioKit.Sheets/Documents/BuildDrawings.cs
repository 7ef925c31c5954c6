using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Documents.BuildSections;

namespace StudioKit.Sheets.Documents;

/// <summary>The drawings of the build sheet, each with the name of its file.</summary>
internal static class BuildDrawings
{
    public static IReadOnlyList<NamedDrawing> Of(Plan plan, FramePlan frame) => frame.Geometry.Members.Count == 0
        ? []
        :
        [
            .. Views(plan, frame),
            new NamedDrawing("frame-exploded", ExplodedDrawing.Of(frame)),
            .. frame.Fittings.Select(fitting => new NamedDrawing($"joint-{FileWord(fitting.Kind)}", JointDrawing.Of(frame, fitting))),
            .. AssemblySection.Drawn(plan, frame).Select(step => new NamedDrawing(FormattableString.Invariant($"step-{step.Number}"), step.Drawing)),
            .. frame.BuiltHolders.Select((holder, i) => new NamedDrawing(FormattableString.Invariant($"holder-{i + 1}"), HolderDrawing.Of(holder, frame.PipeDiameter))),
            .. Templates(plan, frame),
        ];

    public static IEnumerable<NamedDrawing> Views(Plan plan, FramePlan frame) =>
    [
        new NamedDrawing("frame-plan", ViewDrawing.Plan(plan, frame)),
        new NamedDrawing("frame-front", ViewDrawing.Front(plan, frame)),
        new NamedDrawing("frame-side", ViewDrawing.Side(plan, frame)),
    ];

    /// <summary>Templates small enough for one page.</summary>
    public static IEnumerable<NamedDrawing> SmallTemplates(Plan plan, FramePlan frame)
    {
        yield return new NamedDrawing("template-insertion", Building.Templates.InsertionGauge(frame));
        if (Building.Templates.FootHoleInCap(frame) is { } foot)
        {
            yield return new NamedDrawing("template-foot", foot);
        }

        if (Building.Templates.PinHole(frame) is { } pin)
        {
            yield return new NamedDrawing("template-pin", pin);
        }

        yield return new NamedDrawing("template-clips", Building.Templates.ClipStrip(frame, plan.Panel));
        if (Building.Templates.SkirtCorner(frame) is { } corner)
        {
            yield return new NamedDrawing("template-skirt", corner);
        }
    }

    /// <summary>Templates spread over pages.</summary>
    public static IEnumerable<NamedDrawing> LargeTemplates(Plan plan, FramePlan frame)
    {
        if (Building.Templates.SweepCurve(frame) is { } sweep)
        {
            yield return new NamedDrawing("template-sweep", sweep);
        }

        foreach (var (box, i) in frame.Softboxes.Select((box, i) => (box, i + 1)))
        {
            yield return new NamedDrawing(FormattableString.Invariant($"template-softbox-{i}"), SoftboxPattern.Of(box));
        }
    }

    private static IEnumerable<NamedDrawing> Templates(Plan plan, FramePlan frame) =>
        [new NamedDrawing("template-check-square", Building.Templates.CheckSquare), .. SmallTemplates(plan, frame), .. LargeTemplates(plan, frame)];

    private static string FileWord(Physics.Structure.Frames.FittingKind kind) => kind.ToString().ToLowerInvariant();
}
