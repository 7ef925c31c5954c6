using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Firing;
using StudioKit.Planning.Packing;

namespace StudioKit.Planning.Checks;

/// <summary>A limit of the theory, or something to bear in mind, beside a check; one of the forms below.</summary>
public abstract record CheckCaveat
{
    private CheckCaveat()
    {
    }

    /// <summary>What to bear in mind of a structural check.</summary>
    /// <param name="Caveat">As the check has it.</param>
    public sealed record OfStructure(StructuralCaveat Caveat) : CheckCaveat;

    /// <summary>What the builder of a frame should know.</summary>
    /// <param name="Caveat">As the frame has it.</param>
    public sealed record OfFrame(FrameCaveat Caveat) : CheckCaveat;

    /// <summary>What to mind of how a flash is fired.</summary>
    /// <param name="Caveat">As the check has it.</param>
    public sealed record OfTrigger(TriggerCaveat Caveat) : CheckCaveat;

    /// <summary>What to mind of a long thing on its bag.</summary>
    /// <param name="Caveat">As the pack has it.</param>
    public sealed record OfLongPiece(LongPieceCaveat Caveat) : CheckCaveat;
}
