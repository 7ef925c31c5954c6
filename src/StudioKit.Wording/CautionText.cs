using StudioKit.Kits.Studio;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Cautions of a plan in words.</summary>
internal static class CautionText
{
    /// <summary>What it is about, a few words.</summary>
    public static string Title(PlanCaution caution) => caution.Kind switch
    {
        CautionKind.ProtectedHere => "Before anything else: is it protected here?",
        CautionKind.Stings => "Stings",
        CautionKind.Venom => "Venom",
        CautionKind.BitesAndDiseases => "Bites and diseases",
        CautionKind.WetSheetOverFlash => "Wet sheet over a flash",
        CautionKind.EyesOverLowerFlash => "Eyes and the flash below",
        CautionKind.TripHazards => caution.Guys || caution.Uprights.Count > 0 ? "Pegs and cords" : "Pegs",
        CautionKind.SharedChannel => "Neighbours on your channel",
        CautionKind.BlowsAway => "What the wind takes",
        CautionKind.SheetInWind => "Upright sheet in wind",
        CautionKind.DrivingIntoGround => "Stakes and pegs in the ground",
        CautionKind.SheetEdges => "Edges of the upright sheet",
        CautionKind.LoneWork => "Alone",
        CautionKind.Heat => "Heat",
        CautionKind.Sun => "Sun",
        CautionKind.Ticks => "Ticks",
        CautionKind.SheetCleaning => "Cleaning the sheet",
        CautionKind.Bleach => "Bleach",
        CautionKind.FlammableDisinfectant => "Disinfectant that burns",
        _ => throw Wordless(caution.Kind),
    };

    /// <summary>What to do and what to leave, in sentences.</summary>
    public static string Of(PlanCaution caution) => caution.Kind switch
    {
        CautionKind.ProtectedHere => "Find out by the name of the species and of the place before you touch it. Protected, or not known: leave it where it is, unless you carry the permit.",
        CautionKind.Stings => "Bees and wasps: whoever is allergic stays away and carries the remedy; nobody collects them alone. Short of breath or swollen in the face after a sting: call for help at once.",
        CautionKind.Venom => "What may be venomous is handled by trained people alone, with tools and never by hand, by two at the least, who know the nearest hospital and carry a charged phone. Bitten or stung: keep still, cut, suck and tie off nothing, call for help at once, say what it was.",
        CautionKind.BitesAndDiseases => "Mammals bite and carry diseases that kill people, rabies and hantaviruses among them. They are handled only by people trained, licensed and vaccinated as local rules say. Bitten or scratched: wash with soap and water for a quarter of an hour, then to a doctor the same day.",
        CautionKind.WetSheetOverFlash => Wet(caution),
        CautionKind.EyesOverLowerFlash => $"{Places(caution.Flashes)} Nobody looks under the sheet or straight down through it while a flash is on, children least of all, whose eyes are at its height: keep them at arm's length, and say \"flash\" before you fire.",
        CautionKind.TripHazards => Trip(caution),
        CautionKind.SharedChannel => $"{FiringText.Channels(caution.Channels)}: whoever near you is on the same fires your flashes, into eyes too, and you theirs. Before the first frame agree on a channel that nobody else here uses, and set sender and receivers to it.",
        CautionKind.BlowsAway => $"{Sentence.Begin(Listing([.. caution.Shelters.Select(shelter => shelter.Name)]))}: a gust turns it into a sail. Peg and guy what stands, mark the cords, let go of nothing that is held, keep people and animals out of where it would fly. Thunder: fold it, leave poles and umbrella, and get away from trees and water.",
        CautionKind.SheetInWind => InWind(caution),
        CautionKind.DrivingIntoGround => "Ask what lies there before you drive anything in: cables, pipes and drains, and what is buried on protected ground. Never into roots, bulbs, burrows, nests or moss cushions, and on protected ground not at all without leave: feet with ballast need no hole. Close every hole when you go. The rules of the place and its landowner come first.",
        CautionKind.SheetEdges => $"Corners and edges stand at the height of faces and hands: file them round, tape them, hang a rag on each upper corner, and carry the sheet with gloves. Eyes stay clear of the poles' tops: put caps or cut balls on them.",
        CautionKind.LoneWork => $"The kit names no second person, and the plan is for {Field(caution)}. Tell somebody where you are and when you will be back, carry a charged phone, and know where it has a signal. Water, slopes, venomous animals: not alone.",
        CautionKind.Heat => $"{Air(caution)} and {Field(caution)}: water for everybody, shade, a hat, a rest every hour. Headache, dizziness, no more sweat: stop and cool down. Animals suffer sooner than you.",
        CautionKind.Sun => "Never look at the sun, least of all through a lens or an optical viewfinder: it blinds at once and for good. Point no lens at it, and cap every lens that lies about: it burns the sensor, the sheet and dry grass. Shade people, animals and tubs: a tub in the sun is an oven.",
        CautionKind.Ticks => "Long trousers in the socks, kneel on a mat, look yourself over at night; take a tick out straight with fine tweezers, and see a doctor about a spreading red ring or a fever.",
        CautionKind.SheetCleaning => Cleaning(caution),
        CautionKind.Bleach => "Gloves and eye protection, in the open air; never together with any other cleaner, acid, ammonia or alcohol: poisonous gas comes of it. Deadly to water animals: mix it, use it and pour it away far from water.",
        CautionKind.FlammableDisinfectant => "Ethanol burns with a flame that is hard to see: far from flames and cigarettes. No flash is fired, and none is switched on, before all of it has dried off.",
        _ => throw Wordless(caution.Kind),
    };

    private static string Wet(PlanCaution caution) =>
        $"The sheet is wetted for {Listing(caution.Subjects)}. {Places(caution.Flashes)} Before you wet, mist or wipe it, switch the flash off, and put a clear bag over it with the opening down or raise it out of the drip. "
        + "Dry the sheet's underside, its edges and the flash before you switch on. A flash that got wet stays off.";

    private static string Trip(PlanCaution caution) => (caution.Pegs > 0, caution.Uprights.Count > 0) switch
    {
        (_, false) => $"{AtFrame(caution)} stand where people walk, kneel and carry tubs: {(caution.Guys ? "a bright rag on every cord" : "a bright rag on every peg")}, the way in left free, and no animal carried {(caution.Guys ? "under or over a cord" : "between them")}.",
        (true, true) => $"{AtFrame(caution)} and {AtUprights(caution)} {WithRags}",
        _ => $"{Sentence.Begin(AtUprights(caution))} {WithRags}",
    };

    private const string WithRags = "stand where people walk, kneel and carry tubs: a bright rag on every cord, the way in left free, and no animal carried under or over one.";

    private static string AtFrame(PlanCaution caution) => FormattableString.Invariant($"{caution.Pegs} pegs{(caution.Guys ? ", with cords from the top corners," : "")}");

    private static string AtUprights(PlanCaution caution) => FormattableString.Invariant($"{caution.Uprights.Sum(upright => upright.Cords)} pegs with the cords of {Listing([.. caution.Uprights.Select(upright => "the " + upright.Name)])}");

    private static string InWind(PlanCaution caution) =>
        string.Join(' ', caution.Uprights.Select(upright => $"{Sentence.Begin("the " + upright.Name)} comes down from {UprightWindText.Force(upright.TakeDownFrom)} on.")
            .Prepend("A sheet is a sail that falls on what it stands behind.").Append("One hand stays near it, nobody leaves it standing, and it comes down before a storm is near."));

    private static string Cleaning(PlanCaution caution) =>
        $"{Sentence.Begin(caution.Material!)} {(caution.Bent ? "held bent" : "under its clips")} crazes or clouds from {Listing([.. caution.Harms.Select(Harm)])}: none of {(caution.Harms.Count == 1 ? "it" : "them")} on the sheet. "
        + "Water with a little mild, neutral soap, a soft cloth, then rinse with water. Disinfect it only with what its maker allows, as the authority of the place says, rinse well, let it dry.";

    private static string Harm(SheetHarm harm) => harm switch
    {
        SheetHarm.Alcohol => "alcohol (wipes and hand gel too)",
        SheetHarm.Solvents => "solvents (insect repellent too)",
        SheetHarm.Alkalis => "ammonia, soda and alkaline bleach",
        _ => throw new ArgumentOutOfRangeException(nameof(harm), harm, "A harm without words."),
    };

    private static string Places(IReadOnlyList<FlashUnderSheet> flashes) => string.Join(' ', flashes.Select(Place));

    private static string Place(FlashUnderSheet flash) =>
        $"{Sentence.Begin(flash.Flash)} {Held(flash.Support)} {DistanceFormat.Centimetres(flash.BelowPanel)} under the sheet in {Listing(flash.SetUps)}.";

    private static string Held(FlashSupport? support) => support switch
    {
        FlashSupport.Ground => "lies on the ground",
        FlashSupport.Cradle or FlashSupport.SharedCradle => "hangs in its cradle",
        _ => "stands",
    };

    private static string Air(PlanCaution caution) => $"Air of {MeasureFormat.Temperature(caution.Air!.Value)}";

    private static string Field(PlanCaution caution) => FormattableString.Invariant($"{caution.Day!.Value.Hours:0.#} hours in the field");

    private static string Listing(IReadOnlyList<string> items) => items.Count < 2 ? string.Join("", items) : $"{string.Join(", ", items.SkipLast(1))} and {items[^1]}";

    private static ArgumentOutOfRangeException Wordless(CautionKind kind) => new(nameof(kind), kind, "A caution without words.");
}
