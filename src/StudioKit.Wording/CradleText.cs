using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Why a frame does not carry a flash, and where it would.</summary>
internal static class CradleText
{
    /// <summary>The reason as a clause that follows a colon.</summary>
    public static string Clause(CradleFault fault) => fault.Kind switch
    {
        CradleFaultKind.TooLow => $"it would lie {Whole(fault.By)} too low",
        CradleFaultKind.TooNearTopRails => $"it would lie {Whole(fault.By)} too near the rails",
        CradleFaultKind.OutsideLegs => "its rails would be too short between their tees",
        CradleFaultKind.TooNearAnotherRail => $"it would lie {Whole(fault.By)} too near the rail of another flash",
        CradleFaultKind.HeadOutsideLegs => $"its head is {Whole(fault.By)} too large to go between the legs",
        CradleFaultKind.BodyOutsideLegs => $"its body sticks {Whole(fault.By)} out between the legs, whichever way round it lies",
        CradleFaultKind.BodyInGround => $"its body is {Whole(fault.By)} higher than its window is to stand over the ground",
        CradleFaultKind.HeadMeetsAnother => "its head would meet that of another flash that is up at once",
        CradleFaultKind.LowFrame => $"a low frame carries no flash, its window stands {Whole(fault.By)} over the ground",
        CradleFaultKind.UnderGround => $"a window {Whole(fault.By)} below the panel lies under the ground",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "A fault without words."),
    };

    /// <summary>Flash, reason and what to do about it.</summary>
    public static string Sentence(FlashBelow flash) =>
        $"{flash.Flash} in {string.Join(", ", flash.SetUps)}: {(flash.Fault is { } fault ? Clause(fault) : "it is carried")}. {Remedy(flash.Moves)}";

    /// <summary>Where it would be carried.</summary>
    public static string Remedy(IReadOnlyList<CradleMove> moves) => moves.Count == 0
        ? "Give it a stand of its own."
        : $"Move it {string.Join(", or ", moves.Select(Move))}, or give it a stand of its own.";

    private static string Move(CradleMove move) => move.Kind switch
    {
        CradleMoveKind.Up => $"{Whole(move.By)} nearer the panel",
        CradleMoveKind.Down => $"{Whole(move.By)} further from the panel",
        CradleMoveKind.Left => $"{Whole(move.By)} to the left",
        CradleMoveKind.Right => $"{Whole(move.By)} to the right",
        CradleMoveKind.Front => $"{Whole(move.By)} to the front",
        CradleMoveKind.Back => $"{Whole(move.By)} to the back",
        _ => $"with the whole panel {Whole(move.By)} higher",
    };

    private static string Whole(Length length) => PlanFormat.WholeMillimetres(length);
}
