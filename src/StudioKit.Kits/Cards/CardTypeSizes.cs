using UnitsNet;

namespace StudioKit.Kits.Cards;

/// <summary>Sizes of type on a card; each is the largest, and type shrinks together where a side has no room for it.</summary>
public sealed record CardTypeSizes
{
    /// <summary>Nothing on a card is set smaller.</summary>
    public static Length Smallest { get; } = Length.FromDtpPoints(6.5);

    /// <summary>Name of the set-up.</summary>
    public Length SetUp { get; init; } = Length.FromDtpPoints(11);

    /// <summary>The framing.</summary>
    public Length Framing { get; init; } = Length.FromDtpPoints(18);

    /// <summary>The camera's settings.</summary>
    public Length Settings { get; init; } = Length.FromDtpPoints(44);

    /// <summary>Power and distance of the flashes.</summary>
    public Length Flashes { get; init; } = Length.FromDtpPoints(36);

    /// <summary>Settings, powers and distances never shrink under this.</summary>
    public Length LeastNumerals { get; init; } = Length.FromDtpPoints(18);

    /// <summary>What is mounted and where it stands; it never shrinks under 9 pt, which is read at arm's length, or its own size where that is less.</summary>
    public Length Mount { get; init; } = Length.FromDtpPoints(10);

    /// <summary>The check and the remedies.</summary>
    public Length Text { get; init; } = Length.FromDtpPoints(10);

    /// <summary>Everything that is read at leisure: budget, tables, small print.</summary>
    public Length Small { get; init; } = Length.FromDtpPoints(8);
}
