using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Which accessories bring a lens to a wanted magnification.</summary>
public static class ReachingMagnification
{
    private const int MostTubes = 8;
    private const int MostOfOtherKinds = 4;

    /// <summary>Tries every combination of the accessories on hand.</summary>
    /// <param name="bare">Sensor and lens; accessories named in it stay on in every combination.</param>
    /// <param name="onHand">Tubes, close-up lenses and converters that may be added.</param>
    /// <param name="magnification">Magnification wanted on the sensor.</param>
    /// <returns>
    /// The combinations that reach it with the lens's own focusing, the simplest first: fewest pieces, then least glass, then least extension.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A field is outside the range that its record gives; there are more than eight tubes, four close-up lenses or four converters.
    /// </exception>
    [Source("GerrardBurch1975", "system matrix: magnification of conjugate planes")]
    public static MagnificationReach With(OpticalStackCase bare, AccessoriesOnHand onHand, Magnification magnification)
    {
        ArgumentNullException.ThrowIfNull(bare);
        ArgumentNullException.ThrowIfNull(onHand);
        Guard.Positive(magnification.Value, nameof(magnification));
        Guard.Between(onHand.ExtensionTubes.Count, 0, MostTubes, nameof(onHand));
        Guard.Between(onHand.CloseUpLenses.Count, 0, MostOfOtherKinds, nameof(onHand));
        Guard.Between(onHand.Teleconverters.Count, 0, MostOfOtherKinds, nameof(onHand));
        var all = Combinations(bare, onHand)
            .OrderBy(combination => combination.Pieces)
            .ThenBy(combination => combination.GlassPieces)
            .ThenBy(combination => combination.Stack.Extension.Meters)
            .ThenBy(combination => combination.Stack.CloseUpPower.InverseMeters)
            .ThenBy(combination => combination.Stack.TeleconverterFactor)
            .ToList();
        var covering = all.Where(combination => combination.Range.Covers(magnification)).ToList();
        var (least, most) = ExtensionFor(bare, magnification.Value);
        return new MagnificationReach(
            magnification, covering, all, least, most, covering.Count > 0 ? null : Limit(all, magnification, least));
    }

    /// <summary>Extension that tubes must add for a magnification.</summary>
    /// <param name="bare">Sensor, lens and accessories other than the tubes looked for.</param>
    /// <param name="magnification">Magnification wanted on the sensor m [1]; &gt; 0.</param>
    /// <returns>
    /// Least extension, with the lens at closest focus, and most, with the lens at infinity focus; zero where none is needed. For a lens alone
    /// e = f′·(m − m₀), m₀ being the lens's own magnification.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A field or the magnification is outside its range.</exception>
    [Source("ExtensionTubes", "m = m₀ + e/f′")]
    public static (Length Least, Length Most) ExtensionFor(OpticalStackCase bare, double magnification)
    {
        ArgumentNullException.ThrowIfNull(bare);
        Guard.Positive(magnification);
        var geometry = new StackGeometry(bare);
        var atInfinity = ExtensionAt(geometry, 0, magnification);
        var atClosest = ExtensionAt(geometry, geometry.LargestOwn, magnification);
        return (Length.FromMeters(Math.Max(0, atClosest)), Length.FromMeters(Math.Max(0, atInfinity)));
    }

    // Magnification grows in a straight line with extension: dm/de = −d(A)/de = −(k·C) of everything before the gap.
    private static double ExtensionAt(in StackGeometry geometry, double own, double magnification)
    {
        var slope = -geometry.Factor * geometry.ToPrincipalPlane(own).Then(RayTransfer.Lens(1 / geometry.FocalLengthAt(own))).C;
        // A close-up lens more than a focal length before the lens turns the sense round: then no tube helps.
        return slope > 0 ? (magnification - geometry.MagnificationAt(own)) / slope : 0;
    }

    private static IEnumerable<AccessoryCombination> Combinations(OpticalStackCase bare, AccessoriesOnHand onHand)
    {
        for (var tubes = 0; tubes < 1 << onHand.ExtensionTubes.Count; tubes++)
        {
            for (var closeUps = 0; closeUps < 1 << onHand.CloseUpLenses.Count; closeUps++)
            {
                for (var converter = -1; converter < onHand.Teleconverters.Count; converter++)
                {
                    yield return Combination(bare, onHand, Chosen(tubes), Chosen(closeUps), converter);
                }
            }
        }
    }

    private static AccessoryCombination Combination(
        OpticalStackCase bare, AccessoriesOnHand onHand, List<int> tubes, List<int> closeUps, int converter)
    {
        var stack = bare with
        {
            Extension = bare.Extension + Length.FromMeters(tubes.Sum(i => Guard.Positive(onHand.ExtensionTubes[i].Meters, "tube"))),
            CloseUpPower = bare.CloseUpPower + ReciprocalLength.FromInverseMeters(
                closeUps.Sum(i => Guard.Positive(onHand.CloseUpLenses[i].InverseMeters, "close-up lens"))),
        };
        if (converter >= 0)
        {
            var added = onHand.Teleconverters[converter];
            stack = stack with
            {
                TeleconverterFactor = bare.TeleconverterFactor * Guard.Between(added.Factor, 1, double.MaxValue, "converter"),
                TeleconverterLength = bare.TeleconverterLength + added.Length,
            };
        }

        return new AccessoryCombination(tubes, closeUps, converter < 0 ? null : converter, stack, OpticalStack.Range(stack));
    }

    private static List<int> Chosen(int subset) => [.. Enumerable.Range(0, MostTubes).Where(i => (subset & (1 << i)) != 0)];

    private static ReachLimit Limit(List<AccessoryCombination> all, Magnification wanted, Length least)
    {
        var ends = all.SelectMany(combination => new[] { combination.Range.Smallest, combination.Range.Largest }).Where(end => end > 0).ToList();
        var kind = ends.TrueForAll(end => end < wanted.Value) ? ReachLimitKind.TooLarge
            : ends.TrueForAll(end => end > wanted.Value) ? ReachLimitKind.TooSmall
            : ReachLimitKind.Between;
        return new ReachLimit(kind, wanted, ends.Count == 0 ? null : new Magnification(ends.MinBy(end => Math.Abs(Math.Log(end / wanted.Value)))), least);
    }
}
