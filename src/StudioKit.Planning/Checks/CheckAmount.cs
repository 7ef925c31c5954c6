using StudioKit.Kits.Quantities;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Standing;
using StudioKit.Physics.Optics;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>What a check asks for, or what there is of it; one of the forms below.</summary>
public abstract record CheckAmount
{
    private CheckAmount()
    {
    }

    /// <summary>What is no matter of how much.</summary>
    public static CheckAmount Unmeasured { get; } = new Unstated();

    /// <summary>What is no matter of how much.</summary>
    public sealed record Unstated : CheckAmount;

    /// <summary>A quantity with its unit.</summary>
    /// <param name="Value">The quantity, in the unit to show it in.</param>
    public sealed record Measure(IQuantity Value) : CheckAmount;

    /// <summary>A number of things.</summary>
    /// <param name="Value">How many [1].</param>
    public sealed record HowMany(int Value) : CheckAmount;

    /// <summary>A share of a whole.</summary>
    /// <param name="Value">Part over whole [1].</param>
    public sealed record Portion(double Value) : CheckAmount;

    /// <summary>Two sides.</summary>
    /// <param name="Width">Across the camera's view.</param>
    /// <param name="Depth">Along the camera's view.</param>
    public sealed record TwoSides(Length Width, Length Depth) : CheckAmount;

    /// <summary>An image over its object.</summary>
    /// <param name="Value">The magnification.</param>
    public sealed record Enlargement(Magnification Value) : CheckAmount;

    /// <summary>How well the light of a flash is known at a zoom.</summary>
    /// <param name="Within">To either side; 0 stops or more.</param>
    /// <param name="Zoom">Zoom of the head.</param>
    public sealed record KnownTo(Stops Within, Length Zoom) : CheckAmount;

    /// <summary>Room for a long thing on a bag.</summary>
    /// <param name="Longest">Longest that goes inside.</param>
    /// <param name="Placement">Where the thing goes.</param>
    public sealed record LongRoom(Length Longest, LongItemPlacement Placement) : CheckAmount;

    /// <summary>How much of a bag is full.</summary>
    /// <param name="Filled">Volume of what is in it, over the volume it can be filled to [1].</param>
    /// <param name="PackingFactor">Volume it can be filled to, over its volume [1].</param>
    public sealed record BagFill(double Filled, double PackingFactor) : CheckAmount;

    /// <summary>What a person carries.</summary>
    /// <param name="Mass">Mass of the bags.</param>
    /// <param name="ShareOfBody">That mass over the person's [1].</param>
    /// <param name="Band">How that is borne.</param>
    public sealed record OnBody(Mass Mass, double ShareOfBody, LoadBand Band) : CheckAmount;

    /// <summary>Sets of cells and what they give.</summary>
    /// <param name="Sets">Sets [1].</param>
    /// <param name="Flashes">Flashes at the session's power [1].</param>
    /// <param name="Rounds">Rounds of the session that they are for [1].</param>
    public sealed record CellSets(int Sets, int Flashes, int Rounds) : CheckAmount;

    /// <summary>Times of a day.</summary>
    /// <param name="List">The times; none is no time at all.</param>
    public sealed record Times(ValueList<LightTime> List) : CheckAmount;

    /// <summary>Light from the darkest to the brightest.</summary>
    /// <param name="Range">The light; none where the sun gives none.</param>
    public sealed record Brightness(LightRange? Range) : CheckAmount;

    /// <summary>Camera angles, any of which would do.</summary>
    /// <param name="Ranges">From each to each, under the horizontal.</param>
    public sealed record Angles(ValueList<PitchRange> Ranges) : CheckAmount;

    /// <summary>Light to be taken away.</summary>
    /// <param name="Stops">How much [stops]; 0 or more.</param>
    public sealed record Dimmed(double Stops) : CheckAmount;

    /// <summary>Moves of a flash, any one of which would do.</summary>
    /// <param name="Choices">The moves, the least first.</param>
    public sealed record NearestMoves(IReadOnlyList<CradleMove> Choices) : CheckAmount;

    /// <summary>From where a light comes.</summary>
    /// <param name="From">The direction.</param>
    public sealed record Directed(LightDirection From) : CheckAmount;

    /// <summary>Ballast to put on the frame.</summary>
    /// <param name="UnderMiddle">Mass to hang under the middle, over and above what hangs there.</param>
    /// <param name="OnWindwardFeet">Mass that would do as well on the windward feet; none where only the whole weight counts.</param>
    /// <param name="Hung">Mass that hangs under the middle already.</param>
    public sealed record AddedBallast(Mass UnderMiddle, Mass? OnWindwardFeet, Mass Hung) : CheckAmount;
}
