using StudioKit.Physics.Structure;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>What to bear in mind of a structural check.</summary>
internal static class StructureCaveatText
{
    public static string Of(StructuralCaveat caveat) => caveat.Kind switch
    {
        StructuralCaveatKind.ThickSheet => "Thicker than a quarter of the span: thin-plate theory understates the sag.",
        StructuralCaveatKind.DeepSag => "Sags more than half its thickness: tension in the sheet will hold it flatter than this.",
        StructuralCaveatKind.SagWithEdgesHeld => $"All four edges rest on strips; with edges held flat it sags {Tenths(caveat)}, and a real ledge lies between.",
        StructuralCaveatKind.RestsOnTwoEdges => "The sheet rests on its front and back edges alone and spans the depth as a strip.",
        StructuralCaveatKind.SagAtLeastThickness => $"As thin as its standard lets it be, it sags {Tenths(caveat)}.",
        StructuralCaveatKind.HundredthOfShortSide => "A hundredth of the short side is common practice.",
        StructuralCaveatKind.SagUnderElbow => $"Meanwhile it sags {Tenths(caveat)}.",
        StructuralCaveatKind.StressWhileBent => FormattableString.Invariant($"Held so, the sheet bears {caveat.Stress?.Megapascals:0.0} MPa for as long as it is up."),
        StructuralCaveatKind.WetSeason => $"Warmth and moisture together can reach {Tenths(caveat)} at each edge over a wet season.",
        StructuralCaveatKind.HalfPanelOnRail => "Half the panel is taken to rest on one rail, its ends free to turn.",
        StructuralCaveatKind.TwoHundredthOfSpan => "A two-hundredth of the span is common practice.",
        StructuralCaveatKind.RailUnderElbow =>
            FormattableString.Invariant($"{(caveat.Safety == 2 ? "Half" : $"1/{caveat.Safety:0.##} of")} the strength at the day's warmth is allowed; the elbow presses the rail down by {PlanFormat.WholeMillimetres(caveat.Size ?? Length.Zero)}."),
        StructuralCaveatKind.SoftenedPipe =>
            FormattableString.Invariant($"At {MeasureFormat.Temperature(caveat.Warmth ?? Temperature.Zero)} PVC keeps {100 * caveat.StiffnessKept:0} % of its stiffness and {100 * caveat.StrengthKept:0} % of its strength."),
        StructuralCaveatKind.BrittlePipe => "PVC is brittle near freezing: do not drop or strike it.",
        _ => OfLegsAndWind(caveat),
    };

    private static string OfLegsAndWind(StructuralCaveat caveat) => caveat.Kind switch
    {
        StructuralCaveatKind.ElbowOverLeg => $"The elbow leans over one leg; the standing load is raised for creep over weeks; {Safety(caveat)}.",
        StructuralCaveatKind.ElbowAndCordOverLeg =>
            $"The elbow leans over one leg and a cord pulls it down; the standing load is raised for creep over weeks; {Safety(caveat)}.",
        StructuralCaveatKind.HingedByCords => "Cords keep the top in its place, so that a leg is taken as hinged at both ends.",
        StructuralCaveatKind.JointStiffness => "Stiffness of dry push fits differs widely: measure one joint.",
        StructuralCaveatKind.FiftiethOfHeight => "A fiftieth of the height is common practice.",
        StructuralCaveatKind.WindwardCords => $"Half the cords, those to windward, are taken to hold; the push is taken at the top with {Safety(caveat)}.",
        StructuralCaveatKind.CordsTrip => "Keep the cords taut and mark them: people and animals trip over them.",
        StructuralCaveatKind.GustAtPanelHeight => $"The gust is taken at full strength at panel height, with {Safety(caveat)} and no lift under the panel.",
        StructuralCaveatKind.Friction => "Friction between feet and ground is a guess; pegs are better.",
        StructuralCaveatKind.PegHold =>
            "A peg's hold is the kit's own figure, and half the pegs are taken to stand to windward: pull one with a spring balance on the day, as wet sand or peat holds a fraction.",
        StructuralCaveatKind.GustOnOnePole => $"The gust may press beside the middle, so that one pole bears three quarters of it or more; {Safety(caveat)}.",
        StructuralCaveatKind.StakeHold => "A stake's hold is the kit's own figure for this ground at this depth: pull one with a spring balance where it stands.",
        StructuralCaveatKind.GroundNotCounted => "How far stakes work loose in the gust is not counted.",
        StructuralCaveatKind.HalfWayToSubject => "Half the way to the subject is common practice.",
        StructuralCaveatKind.LeastThickness => "Taken as thin as the sheet's standard lets it be.",
        _ => throw new ArgumentOutOfRangeException(nameof(caveat), caveat.Kind, "A caveat without words."),
    };

    private static string Tenths(StructuralCaveat caveat) => PlanFormat.TenthMillimetres(caveat.Size ?? Length.Zero);

    private static string Safety(StructuralCaveat caveat) => FormattableString.Invariant($"a safety factor of {caveat.Safety:0.##}");
}
