using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Physics;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A holder built of the frame's pipe: a pole, pushed over a peg in the ground, with its boom on a tee; or an arm that is clipped to the frame.</summary>
/// <param name="Holder">Its name.</param>
/// <param name="Poles">Pieces of the pole; 0 for an arm [1].</param>
/// <param name="PoleLength">Length of each.</param>
/// <param name="Arms">Pieces of boom or arm; 0 where it has none [1].</param>
/// <param name="ArmLength">Length of each.</param>
/// <param name="OnPeg">Whether it stands on a peg; else it is clipped to the frame.</param>
public sealed record BuiltHolder(string Holder, int Poles, Length PoleLength, int Arms, Length ArmLength, bool OnPeg)
{
    /// <summary>Couplings that join its pieces [1].</summary>
    public int Couplings => Math.Max(0, Poles - 1) + Math.Max(0, Arms - 1);

    /// <summary>Tees that join boom and pole [1].</summary>
    public int Tees => Poles > 0 && Arms > 0 ? 1 : 0;

    /// <summary>Clips that fasten an arm to the frame [1].</summary>
    public int Clips => OnPeg ? 0 : 2;

    /// <summary>How it goes together, one act a step.</summary>
    public ValueList<HolderStep> Assembly =>
    [
        .. Poles > 1 ? [HolderStep.JoinPole] : Array.Empty<HolderStep>(),
        .. Arms > 1 ? [HolderStep.JoinArm] : Array.Empty<HolderStep>(),
        OnPeg ? HolderStep.StandOnPeg : HolderStep.ClipToRail,
        .. Tees > 0 ? [HolderStep.TopWithBoom] : Array.Empty<HolderStep>(),
        HolderStep.FastenFlash,
    ];

    /// <summary>Its longest piece.</summary>
    public Length LongestPiece => Poles > 0 && PoleLength > ArmLength ? PoleLength : ArmLength;

    /// <summary>Every holder of a kit that is built.</summary>
    internal static IReadOnlyList<BuiltHolder> Of(KitSpec kit) => [.. kit.Holders.Where(holder => holder.Built).Select(holder => Of(kit, holder))];

    /// <summary>One that is built.</summary>
    internal static BuiltHolder Of(KitSpec kit, HolderSpec holder)
    {
        var onPeg = holder.Kind == HolderKind.Stand;
        var (poles, pole) = Split(kit, onPeg ? holder.HighestHold : Length.Zero);
        var (arms, arm) = Split(kit, holder.FullReach);
        return new BuiltHolder(holder.Name, poles, pole, arms, arm, onPeg);
    }

    /// <summary>What it weighs.</summary>
    internal Mass MassOf(KitSpec kit)
    {
        var metres = (Poles * PoleLength.Meters) + (Arms * ArmLength.Meters);
        return Mass.FromKilograms(PipeMass.PerMetre(FrameDesign.PipeOf(kit.Frame.Pipe)) * metres) + (Couplings * kit.Frame.Fittings.Coupling.Mass) + (Tees * kit.Frame.Fittings.Tee.Mass);
    }

    // Pieces alike, to the half millimetre, none longer than goes into the pack.
    private static (int Count, Length Each) Split(KitSpec kit, Length whole)
    {
        if (whole <= Length.Zero)
        {
            return (0, Length.Zero);
        }

        var count = (int)Math.Ceiling((whole / FrameDesign.LongestPiece(kit)) - 1e-9);
        return (count, Length.FromMillimeters(Math.Round(whole.Millimeters / count * 2) / 2));
    }
}
