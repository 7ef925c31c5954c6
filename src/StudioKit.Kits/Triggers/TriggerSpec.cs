using StudioKit.Kits.Lighting;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Triggers;

/// <summary>What fires flashes: a radio, a cord, an optical cell, or a hand.</summary>
/// <example><code language="yaml">
/// triggers:
///   - {name: sender, kind: radio-sender, channel: 5, groups: 3, mass: 45 g}
///   - {name: receiver, kind: radio-receiver, count: 2, groups: 3, mass: 45 g}
/// </code></example>
public sealed record TriggerSpec
{
    // How far they reach outdoors where a kit does not say (common practice, no source).
    private static readonly Length ByRadio = Length.FromMeters(30);
    private static readonly Length BySight = Length.FromMeters(5);
    private static readonly Length ByCord = Length.FromMeters(1);

    /// <summary>Name on the cards and the pack list; unique among the triggers.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required TriggerKind Kind { get; init; }

    /// <summary>How many are carried [1].</summary>
    public int Count { get; init; } = 1;

    /// <summary>Channel that a radio is set to; a receiver without one of its own is set to its sender's. None for what is no radio.</summary>
    public int? Channel { get; init; }

    /// <summary>Groups that a radio tells apart, named by letters from A [1].</summary>
    public int Groups { get; init; } = 1;

    /// <summary>Whether a sender sets the power of each group from the camera.</summary>
    public bool SetsPower { get; init; }

    /// <summary>Shortest shutter speed that it fires in time for; the camera's own where the kit gives none.</summary>
    public ShutterSpeed? Sync { get; init; }

    /// <summary>How far it reaches; usual for its kind where the kit gives none.</summary>
    public Length? Range { get; init; }

    /// <summary>How far it reaches, given or usual; for a cord its length.</summary>
    public Length Reach => Range ?? Kind switch
    {
        TriggerKind.Cord => ByCord,
        TriggerKind.OpticalCell => BySight,
        _ => ByRadio,
    };

    /// <summary>Name of the flash that it is built into; none where it is a thing of its own.</summary>
    public string? BuiltInto { get; init; }

    /// <summary>Cells that it takes; none where it takes none, or its own are never changed.</summary>
    public CellSpec? Cell { get; init; }

    /// <summary>Cells in one of it [1].</summary>
    public int CellCount { get; init; } = 2;

    /// <summary>Mass of one without cells; usual for its kind where the kit gives none.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Longest side as it is packed; with the next two the file's <c>packed: 75 mm x 40 mm x 35 mm</c>.</summary>
    public Length? PackedLength { get; init; }

    /// <summary>Second side.</summary>
    public Length? PackedWidth { get; init; }

    /// <summary>Third side.</summary>
    public Length? PackedDepth { get; init; }

    /// <summary>Price of one that is to be bought; on hand where the kit gives none.</summary>
    public decimal? Price { get; init; }

    /// <summary>Whether it is a thing that is packed.</summary>
    public bool IsCarried => Kind != TriggerKind.Hand && BuiltInto is null;

    /// <summary>Whether it sends or receives by radio.</summary>
    public bool IsRadio => Kind is TriggerKind.RadioSender or TriggerKind.RadioReceiver;

    /// <summary>Whether its other end is on the camera's hot shoe or sync socket, of which a camera has one.</summary>
    public bool TakesShoe => Kind is TriggerKind.RadioSender or TriggerKind.Cord;
}
