using StudioKit.Kits;
using StudioKit.Physics.Light.Covers;
using StudioKit.Planning;
using StudioKit.Planning.Covers;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Clear covers and tanks in words: what is seen through, from where it is clear, and for how long.</summary>
internal static class CoverText
{
    private const double Middle = 1.0 / 3;

    /// <summary>What a card says, where room is short.</summary>
    /// <param name="cover">The cover.</param>
    /// <param name="framing">The card's framing.</param>
    /// <param name="saysWhatShows">Whether there is room for where flashes show.</param>
    public static string OfCard(CoverPlan cover, string framing, bool saysWhatShows)
    {
        var under = cover.Water > Length.Zero ? $"In the {cover.Cover}, water of its own pond {PlanFormat.Millimetres(cover.Water)} deep" : $"Under the {cover.Cover}";
        return cover.Lifted
            ? $"{under} until it sits, {Stay(cover)}; lift it and photograph."
            : $"{under}, {Stay(cover)}. {(cover.Framings.FirstOrDefault(one => one.Framing == framing) is { } seen ? $"{Seen(seen)} {(saysWhatShows ? Showing(seen) : "")}{Clear(seen)}" : "")}".TrimEnd();
    }

    /// <summary>How long an animal may stay.</summary>
    public static string Stay(CoverPlan cover) => $"{MeasureFormat.Minutes(cover.Stay.Limit)} at most{Because(cover.Stay.Kind)}";

    /// <summary>From where the picture is clear.</summary>
    public static string Clear(CoveredFraming framing) => framing.Clear.Count == 0 ? "No camera angle is clear." : $"Clear at {Ranges(framing.Clear)}.";

    /// <summary>Camera angles.</summary>
    public static string Ranges(IReadOnlyList<PitchRange> ranges) => string.Join(" and ", ranges.Select(range =>
        range.From.Degrees >= range.To.Degrees ? MeasureFormat.Degrees(range.From) : $"{MeasureFormat.Degrees(range.From)} to {MeasureFormat.Degrees(range.To)}"));

    /// <summary>The part that is looked through.</summary>
    public static string Face(CoverSight seen) => seen.Face is { } face ? Face(face) : "the water's edge";

    /// <summary>A part of a cover.</summary>
    public static string Face(CoverFace face) => face switch
    {
        CoverFace.Front => "front wall",
        CoverFace.Back => "back wall",
        CoverFace.Left => "left wall",
        CoverFace.Right => "right wall",
        CoverFace.Top => "top",
        CoverFace.Round => "round wall",
        CoverFace.Water => "water's surface",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "A part of a cover without words."),
    };

    /// <summary>Flashes that show, and where in the frame.</summary>
    public static string Shown(CoveredView view) => view.Shown.Count == 0 ? "none" : string.Join("; ", view.Shown.Select(Shown));

    /// <summary>What spoils a view, and by how much.</summary>
    public static string Fault(CoverFault fault, CoveredView view) => fault switch
    {
        CoverFault.Reflection => string.Join(", ", view.Shown.Select(Shown)),
        CoverFault.NoRoom => $"the {Face(view.Seen)} stands {PlanFormat.Millimetres(-view.Room)} too near for the lens",
        CoverFault.Astigmatism => $"the {Face(view.Seen)}, seen at a slant, draws lines {PlanFormat.Millimetres(view.Seen.AstigmaticDifference)} apart, more than is sharp",
        CoverFault.WaterEdge => "the line of sight meets the water's edge",
        CoverFault.BottomMirrors => "the bottom of the tank is a mirror and shows no sheet; look through the surface, or wet the sheet under it",
        CoverFault.FootInFrame => "the wall's foot crosses the frame",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "A fault without words."),
    };

    /// <summary>A view with what spoils it.</summary>
    public static string Spoilt(CoveredFraming framing, CoveredView view) =>
        $"{framing.Framing} at {MeasureFormat.Degrees(view.Pitch)}: {string.Join("; ", view.Faults.Select(fault => Fault(fault, view)))}.";

    /// <summary>What a report says of room, foot, stay and warmth.</summary>
    public static string Whole(CoverPlan cover) => string.Join(' ', new[]
    {
        $"{Sentence.Begin(cover.Cover)}, a {MemberText.Of(cover.Shape)}: room for animals {AnimalText.Of(cover.LongestAnimal)} long and {AnimalText.Of(cover.HighestAnimal)} high.",
        $"Its foot is {PlanFormat.Rectangle(cover.FootWidth, cover.FootDepth)}{(cover.RoomWidth is null ? "" : cover.StandsOnSheet ? " and stands on the sheet" : " and does not stand on the flat sheet")}.",
        $"{Sentence.Begin(Stay(cover))}.",
        cover.Warming is { } rise ? FormattableString.Invariant($"Daylight warms it by {rise.Kelvins:0.0} K at most.") : "",
        cover.Lifted ? "It is lifted for the picture." : "",
        cover.Water > Length.Zero ? FormattableString.Invariant($"Water spreads the light of what is in it, which the powers make up for; what it absorbs in so little depth is left out. In it the animal is sharp over {RefractiveIndex.Water:0.00} times the depth.") : "",
    }.Where(text => text.Length > 0));

    private static string Because(CoverStayKind kind) => kind switch
    {
        CoverStayKind.Fog => " (wet skin fogs it)",
        CoverStayKind.Usual => " (common practice)",
        _ => "",
    };

    private static string Shown(ShownFlash flash) =>
        $"the {flash.Flash} shows in the {Face(flash.Where.Face)}, {Place(flash)}{(flash.Where.OnSubject ? ", over the animal" : "")}";

    // The picture's own clock: twelve is its top edge.
    private static string Place(ShownFlash flash) => flash.TowardsEdge < Middle
        ? "mid-frame"
        : FormattableString.Invariant($"at {Clock(flash.Hour)}, {10 * Math.Round(flash.TowardsEdge * 10)} % of the way to the edge");

    private static string Clock(double hour) => FormattableString.Invariant($"{((int)Math.Round(hour) + 11) % 12 + 1} o'clock");

    private static string Showing(CoveredFraming framing) => string.Concat(framing.Views.Where(view => view.Shown.Count > 0)
        .Select(view => $"At {MeasureFormat.Degrees(view.Pitch)} {string.Join("; ", view.Shown.Select(Shown))}. "));

    private static string Seen(CoveredFraming framing) => string.Join(' ', framing.Views.GroupBy(view => (view.Seen.Face, view.Pitch.Degrees)).Select(views =>
        $"At {MeasureFormat.Degrees(views.First().Pitch)} through the {Face(views.First().Seen)}, {Glass(views.First())}."));

    private static string Glass(CoveredView view) => view.Room > Length.Zero ? $"glass {PlanFormat.Millimetres(view.Room)} from it" : "where the lens has no room";
}
