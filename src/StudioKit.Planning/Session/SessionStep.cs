using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>One step of a session.</summary>
public sealed record SessionStep
{
    /// <summary>What is done.</summary>
    public required SessionStepKind Kind { get; init; }

    /// <summary>What is tested in it, in order; empty unless it is a test.</summary>
    public ValueList<TestStep> Tests { get; init; } = [];

    /// <summary>Flashes that are fired in another way from here on; empty unless the triggers are set.</summary>
    public ValueList<FlashFiring> Fired { get; init; } = [];

    /// <summary>What is put up in it against sun and wind; empty unless that is done.</summary>
    public ValueList<ShelterPlan> PutUp { get; init; } = [];

    /// <summary>Names of what is taken down in it.</summary>
    public ValueList<string> TakenDown { get; init; } = [];

    /// <summary>Name of the subject that it is for.</summary>
    public required string Subject { get; init; }

    /// <summary>Length of the subject, and so of the object that is tested with.</summary>
    public required Length SubjectLength { get; init; }

    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Name of the framing; with the set-up it names the card to take.</summary>
    public required string Framing { get; init; }

    /// <summary>How long it takes.</summary>
    public required Duration Time { get; init; }

    /// <summary>Frames taken [1].</summary>
    public int Frames { get; init; }

    /// <summary>How many of them are one focus stack, after the others [1].</summary>
    public int StackFrames { get; init; }

    /// <summary>Flashes fired, every head counted [1].</summary>
    public int Flashes { get; init; }

    /// <summary>Whether the animal is held meanwhile.</summary>
    public bool Held { get; init; }

    /// <summary>Whether the subject stands on the panel.</summary>
    public bool OnPanel { get; init; }

    /// <summary>Whether the subject stays where it sits.</summary>
    public bool WhereItSits { get; init; }

    /// <summary>What is turned over the animal, or what it swims in; none where there is none.</summary>
    public SessionCover? Cover { get; init; }

    /// <summary>The sheet that stands behind the subject; none where none does.</summary>
    public SessionUpright? Upright { get; init; }

    /// <summary>The card to take, as its head reads.</summary>
    public string Card => $"{SetUp}, {Framing}";
}
