using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>One act of taking a frame down.</summary>
public abstract record PackingStep
{
    private PackingStep()
    {
    }

    /// <summary>Every flash is switched off and left to rest.</summary>
    public sealed record SwitchOff : PackingStep;

    /// <summary>The skirts come off.</summary>
    public sealed record TakeSkirts : PackingStep;

    /// <summary>The flashes below come out.</summary>
    /// <param name="Flashes">Their names.</param>
    public sealed record TakeFlashes(ValueList<string> Flashes) : PackingStep;

    /// <summary>The panel is unclipped, wiped and wrapped.</summary>
    /// <param name="Clips">Clips to count [1].</param>
    public sealed record TakePanel(int Clips) : PackingStep;

    /// <summary>The ballast is emptied.</summary>
    public sealed record EmptyBallast : PackingStep;

    /// <summary>The pegs are drawn.</summary>
    /// <param name="Count">Pegs to count [1].</param>
    /// <param name="Cords">Cords to count [1].</param>
    public sealed record DrawPegs(int Count, int Cords) : PackingStep;

    /// <summary>The pins are pulled.</summary>
    /// <param name="At">Labels of the joints.</param>
    public sealed record PullPins(ValueList<string> At) : PackingStep;

    /// <summary>The right side is pulled off the rails across, and the rails out of the left.</summary>
    /// <param name="Rails">Labels of their pieces.</param>
    public sealed record PartSides(ValueList<string> Rails) : PackingStep;

    /// <summary>A side is laid down and its rails pulled out of its legs.</summary>
    /// <param name="Side">The side.</param>
    /// <param name="Rails">Labels of the pieces of its rails.</param>
    public sealed record PartLegs(FrameSide Side, ValueList<string> Rails) : PackingStep;

    /// <summary>The feet are screwed in.</summary>
    /// <param name="Joints">Labels of their caps.</param>
    public sealed record ShortenFeet(ValueList<string> Joints) : PackingStep;

    /// <summary>The pieces are bundled by letter and counted.</summary>
    /// <param name="Pieces">Each letter with its length and how many there are.</param>
    public sealed record BundlePieces(ValueList<(string Letter, Length Cut, int Count)> Pieces) : PackingStep;

    /// <summary>The fittings are counted.</summary>
    /// <param name="Count">How many there are [1].</param>
    public sealed record CountFittings(int Count) : PackingStep;
}
