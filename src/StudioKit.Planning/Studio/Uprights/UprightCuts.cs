using StudioKit.Kits;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Pipe and fittings of an upright sheet: two poles, and what they stand in.</summary>
internal sealed class UprightCuts
{
    // Of the step, so that 571.4999999 is not rounded to the half millimetre below.
    private const double Slack = 1e-6;

    private readonly KitSpec _kit;
    private readonly FittingSet _fittings;
    private readonly Length _gap;

    /// <param name="kit">The kit.</param>
    /// <param name="upright">The upright sheet.</param>
    /// <param name="overFoot">Length of a pole over the ground, or over the rail that holds it.</param>
    /// <param name="held">The frame that holds it; none where it stands on the ground.</param>
    public UprightCuts(KitSpec kit, UprightSpec upright, Length overFoot, FrameHold? held)
    {
        (_kit, _fittings, _gap) = (kit, FrameDesign.CaseOf(kit.Frame.Fittings), kit.Frame.InsertionGap);
        Pole = HalfMillimetres(upright.Carrier switch
        {
            UprightCarrier.Stakes => overFoot + upright.StakeDepth,
            UprightCarrier.Feet => overFoot - (kit.Frame.Pipe.OutsideDiameter / 2) - _fittings.Tee.TakeOff - _gap,
            _ => overFoot + (held?.RailToBar ?? Length.Zero) + (2 * kit.Frame.Pipe.OutsideDiameter),
        });
        (var parts, var each) = Parts(Pole);
        CouplingHeights = [.. Enumerable.Range(1, parts - 1).Select(part => (part * Pole / parts) - (Pole - overFoot)).Where(height => height > Length.Zero)];
        ValueList<UprightPiece> feet = upright.Carrier == UprightCarrier.Feet ? [new(UprightPieceRole.HalfFoot, $"half foot of {upright.Name}", HalfFoot(upright), 4)] : [];
        ValueList<UprightPiece> bar = held is { } frame ? [new(UprightPieceRole.Bar, $"bar of {upright.Name}", HalfMillimetres(frame.BarLength), 1)] : [];
        Pieces = [new UprightPiece(UprightPieceRole.Pole, $"pole of {upright.Name}", each, 2 * parts), .. feet, .. bar];
        Fittings =
        [
            .. Count(FittingKind.Tee, upright.Carrier == UprightCarrier.Feet ? 2 : 0),
            .. Count(FittingKind.Coupling, 2 * (parts - 1)),
            .. Count(FittingKind.Cap, upright.Carrier == UprightCarrier.Feet ? 4 : 0),
        ];
    }

    /// <summary>A whole pole.</summary>
    public Length Pole { get; }

    /// <summary>Couplings of a pole over ground or rail, from below.</summary>
    public ValueList<Length> CouplingHeights { get; }

    public ValueList<UprightPiece> Pieces { get; }

    public ValueList<FittingCount> Fittings { get; }

    /// <summary>Pipe and fittings.</summary>
    public Mass Mass => MassOf(Pieces) + FittingMass;

    /// <summary>Both feet with their fittings.</summary>
    public Mass FeetMass => MassOf(Pieces.Where(piece => piece.Role == UprightPieceRole.HalfFoot)) + FittingMass;

    private Mass FittingMass => Mass.FromKilograms(Fittings.Sum(fitting => fitting.Count * fitting.MassEach.Kilograms));

    private Mass MassOf(IEnumerable<UprightPiece> pieces) =>
        Mass.FromKilograms(PipeMass.PerMetre(FrameDesign.PipeOf(_kit.Frame.Pipe)) * pieces.Sum(piece => piece.Count * piece.Cut.Meters));

    // Pieces alike, none longer than goes into the pack; a coupling takes the place of what lies between two ends.
    private (int Count, Length Each) Parts(Length whole)
    {
        var longest = FrameDesign.LongestPiece(_kit);
        var joint = 2 * (_fittings.Coupling.TakeOff + _gap);
        var count = Math.Max(1, (int)Math.Ceiling(((whole - joint) / (longest + joint)) - Slack));
        count = whole <= longest ? 1 : Math.Max(2, count);
        return (count, HalfMillimetres((whole - ((count - 1) * joint)) / count));
    }

    private Length HalfFoot(UprightSpec upright) =>
        HalfMillimetres((upright.FootLength / 2) - _fittings.Tee.TakeOff - _fittings.Cap.TakeOff - (2 * _gap));

    private IEnumerable<FittingCount> Count(FittingKind kind, int count) => count > 0 ? [FittingCounts.Of(_kit, kind, count)] : [];

    private static Length HalfMillimetres(Length length) => Length.FromMillimeters(Math.Max(0, Math.Round((length.Millimeters * 2) + Slack) / 2));
}
