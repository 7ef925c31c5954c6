using StudioKit.Kits.Uprights;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building;

/// <summary>An upright sheet from the camera's side and from its right, whole or as far as a step has brought it.</summary>
internal static class UprightDrawing
{
    private const double OutsideSheet = 10;

    /// <summary>As the camera sees it, with its dimensions.</summary>
    public static Drawing Front(UprightStandPlan upright)
    {
        var lines = new UprightLines(upright);
        var (left, right, low, high) = (-lines.Width / 2, lines.Width / 2, UprightLines.Up(lines.LowerEdge), UprightLines.Up(lines.UpperEdge));
        return new Drawing(
            $"{upright.Name} from the front",
            $"The sheet between its two poles, {CutFormat.CutLength(upright.PoleSpacing)} from middle to middle, {upright.ClipsPerPole} clips on each",
            [
                .. lines.Front(null),
                new Dimension(new Point(left, high), new Point(right, high), -OutsideSheet, CutFormat.CutLength(upright.Width)),
                new Dimension(new Point(right, high), new Point(right, low), -OutsideSheet, upright.Lean > UnitsNet.Angle.Zero ? $"{CutFormat.CutLength(upright.Height)} along it" : CutFormat.CutLength(upright.Height)),
                new Dimension(new Point(-lines.Spacing / 2, lines.Lowest), new Point(lines.Spacing / 2, lines.Lowest), OutsideSheet, CutFormat.CutLength(Tenths(upright.PoleSpacing))),
                .. Under(upright, lines, left, low),
            ]);
    }

    /// <summary>From the right of the camera, with its dimensions.</summary>
    public static Drawing Side(UprightStandPlan upright)
    {
        var lines = new UprightLines(upright);
        return new Drawing(
            $"{upright.Name} from the right",
            $"The sheet {CutFormat.CutLength(upright.ToSubject)} behind the subject; the camera is on the left",
            [
                .. lines.Side(null),
                .. lines.Subject(),
                new Dimension(new Point(lines.SubjectBack, lines.SubjectLevel), new Point(lines.BackAt(lines.SubjectUp), lines.SubjectLevel), -OutsideSheet, CutFormat.CutLength(upright.ToSubject)),
                .. Footing(upright, lines),
            ]);
    }

    /// <summary>Both views as they are after a step, what the step brings in heavy lines.</summary>
    public static Drawing Step(UprightStandPlan upright, UprightStep step)
    {
        var lines = new UprightLines(upright);
        var (front, side) = step switch
        {
            UprightStep.MarkClips => ([.. lines.SheetAlone()], [.. lines.Front(step)]),
            UprightStep.LookOver => ([.. lines.Front(step), .. lines.SheetToCome()], [.. lines.Side(step), .. lines.Subject()]),
            _ => (lines.Front(step).ToList(), lines.Side(step).ToList()),
        };
        var (a, b) = (Of(front), Of(side));
        return new Drawing($"{upright.Name}: {step}", "The sheet from the front and from the right as this step leaves it",
            [.. front.Select(mark => mark.Under(Similarity.Shift(-a.Left, 0))), .. side.Select(mark => mark.Under(Similarity.Shift(a.Width + (0.15 * (a.Width + b.Width)) - b.Left, 0)))]);
    }

    /// <summary>Both views as they are before a packing step, what it takes away in heavy lines; none where it takes nothing away.</summary>
    public static Drawing? Packing(UprightStandPlan upright, UprightPackingStep step)
    {
        UprightStep? undone = step switch
        {
            UprightPackingStep.TakeSheet => UprightStep.HangSheet,
            UprightPackingStep.UntieCords => UprightStep.TieCords,
            UprightPackingStep.LiftBallast => UprightStep.LayBallast,
            UprightPackingStep.UnclipPoles => UprightStep.ClipPoles,
            UprightPackingStep.UnclipBar => UprightStep.ClipBar,
            UprightPackingStep.PullStakes => UprightStep.DriveStakes,
            UprightPackingStep.PartFeet => UprightStep.StandFeet,
            UprightPackingStep.PartPoles => UprightStep.JoinPoles,
            _ => null,
        };
        return undone is { } taken ? Step(upright, taken) with { Title = $"{upright.Name}: {step}" } : null;
    }

    private static Bounds Of(IEnumerable<Primitive> marks) => marks.Select(mark => mark.Bounds).Aggregate((one, other) => one.With(other));

    private static IEnumerable<Primitive> Under(UprightStandPlan upright, UprightLines lines, double left, double low)
    {
        if (lines.LowerEdge > 1)
        {
            yield return new Dimension(new Point(left, UprightLines.Up(0)), new Point(left, low), -OutsideSheet, CutFormat.CutLength(Tenths(upright.LowerEdge)));
        }
    }

    private static IEnumerable<Primitive> Footing(UprightStandPlan upright, UprightLines lines)
    {
        if (upright.Carrier == UprightCarrier.Stakes)
        {
            yield return new Dimension(new Point(lines.BackAt(-lines.Depth), UprightLines.Up(0)), new Point(lines.BackAt(-lines.Depth), lines.Lowest), OutsideSheet, $"{CutFormat.CutLength(upright.StakeDepth)}{(upright.Lean > UnitsNet.Angle.Zero ? " along it" : "")}");
        }

        if (upright.Carrier == UprightCarrier.Feet)
        {
            var half = upright.FootLength.Millimeters / 2;
            yield return new Dimension(new Point(-half, UprightLines.Up(0)), new Point(half, UprightLines.Up(0)), OutsideSheet, CutFormat.CutLength(upright.FootLength));
        }

        if (upright.Cords > 0)
        {
            var reach = upright.PegDistance.Millimeters;
            yield return new Dimension(new Point(lines.BackAt(lines.UpperEdge), UprightLines.Up(0)), new Point(lines.BackAt(lines.UpperEdge) + reach, UprightLines.Up(0)), 2 * OutsideSheet, CutFormat.CutLength(Tenths(upright.PegDistance)));
        }
    }

    private static UnitsNet.Length Tenths(UnitsNet.Length length) => UnitsNet.Length.FromMillimeters(Math.Round(length.Millimeters, 1));
}
