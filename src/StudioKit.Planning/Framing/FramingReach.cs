using StudioKit.Kits.Cameras;
using StudioKit.Physics.Optics;

namespace StudioKit.Planning.Framing;

/// <summary>How a lens comes to a magnification with what is on hand.</summary>
internal sealed record FramingReach
{
    // A reversed lens or a lens without focusing on whole tubes gives steps; a tenth beside the wish still frames the subject (common practice, no source).
    private const double Near = 0.1;

    private const int MostTubes = 8;
    private const int MostOfOtherKinds = 4;

    /// <summary>The focused stack; where the magnification is out of reach, as a tube of the missing length would give it.</summary>
    public required OpticalStackResult Stack { get; init; }

    /// <summary>The accessories used; none where the magnification is out of reach.</summary>
    public AccessoryCombination? Combination { get; init; }

    /// <summary>Other combinations that reach it.</summary>
    public IReadOnlyList<AccessoryCombination> Others { get; init; } = [];

    /// <summary>Why it is out of reach, and what would reach it; none where it is reached.</summary>
    public ReachLimit? Limit { get; init; }

    /// <summary>What the reader must know.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>Looks for the simplest combination.</summary>
    public static FramingReach Find(OpticalStackCase bare, AccessoriesSpec accessories, Magnification wanted)
    {
        var reach = ReachingMagnification.With(bare, OnHand(accessories), wanted);
        var found = reach.Covering.Count > 0 ? Exactly(reach) : Nearly(reach) ?? OutOfReach(bare, reach);
        return TooMany(accessories) ? found with { Caveats = [.. found.Caveats, Beyond] } : found;
    }

    private const string Beyond = "More accessories are on hand than can be tried together; the first eight tubes and four of each other kind were.";

    private static FramingReach Exactly(MagnificationReach reach) => new()
    {
        Stack = OpticalStack.AtMagnification(reach.Covering[0].Stack, reach.Wanted).Stack!,
        Combination = reach.Covering[0],
        Others = [.. reach.Covering.Skip(1).Take(3)],
    };

    private static FramingReach? Nearly(MagnificationReach reach)
    {
        var (combination, magnification) = reach.All
            .SelectMany(each => new[] { (each, each.Range.Smallest), (each, each.Range.Largest) })
            .Where(end => end.Item2 > 0)
            .OrderBy(end => Off(end.Item2))
            .FirstOrDefault();
        return combination is null || Off(magnification) > Near
            ? null
            : new FramingReach
            {
                Stack = OpticalStack.AtMagnification(combination.Stack, new Magnification(magnification)).Stack!,
                Combination = combination,
                Caveats = [$"{reach.Wanted.Nominal} is not met exactly: {new Magnification(magnification).Nominal} is the nearest that is on hand."],
            };

        double Off(double m) => Math.Abs((m / reach.Wanted.Value) - 1);
    }

    private static FramingReach OutOfReach(OpticalStackCase bare, MagnificationReach reach)
    {
        var withTube = bare with { Extension = reach.LeastExtension };
        return new FramingReach
        {
            Stack = OpticalStack.AtMagnification(withTube, reach.Wanted).Stack
                ?? OpticalStack.FromExtension(
                    bare.Lens.FocalLength, bare.Lens.FocalLength * reach.Wanted.Value, bare.Aperture, bare.SensorWidth, bare.SensorHeight, bare.Lens.PupilRatio),
            Limit = reach.Limit,
        };
    }

    private static AccessoriesOnHand OnHand(AccessoriesSpec accessories) => new()
    {
        ExtensionTubes = [.. accessories.ExtensionTubes.Take(MostTubes).Select(tube => tube.Length)],
        CloseUpLenses = [.. accessories.CloseUpLenses.Take(MostOfOtherKinds).Select(lens => lens.Power)],
        Teleconverters = [.. accessories.Teleconverters.Take(MostOfOtherKinds).Select(converter => new TeleconverterOptics(converter.Factor, converter.Length))],
    };

    private static bool TooMany(AccessoriesSpec accessories) =>
        accessories.ExtensionTubes.Count > MostTubes
        || accessories.CloseUpLenses.Count > MostOfOtherKinds
        || accessories.Teleconverters.Count > MostOfOtherKinds;
}
