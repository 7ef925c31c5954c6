using StudioKit.Kits;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;

namespace StudioKit.Planning.Features;

/// <summary>What the lenses of a kit show at magnifications that the kit does not name, with what is on hand.</summary>
/// <param name="kit">The kit.</param>
internal sealed class LensReach(KitSpec kit)
{
    private const int Gap = 12;

    private readonly Dictionary<(string Lens, double Magnification), PlannedFraming> _framings = [];

    /// <summary>Marks as people set them, 1:10 to 10:1: ratios to a tenth under ten, and so dense that two differ by a tenth at most.</summary>
    private static readonly double[] Marks =
        [.. Enumerable.Range(11, 90).Select(tenths => 10.0 / tenths).Concat(Enumerable.Range(10, 91).Select(tenths => tenths / 10.0)).Order()];

    /// <summary>Lowest mark at which a framing of the same lens passes.</summary>
    /// <param name="framing">A framing of the lens.</param>
    /// <param name="passes">Whether a framing does; once one does, every larger one must.</param>
    /// <returns>The magnification; none where the lens reaches none that does.</returns>
    public Magnification? Lowest(PlannedFraming framing, Func<PlannedFraming, bool> passes)
    {
        var (low, high) = (0, Marks.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = passes(At(framing, Marks[middle])) ? (low, middle) : (middle + 1, high);
        }

        // Between what one tube reaches and the next there may be a gap.
        return Enumerable.Range(low, Math.Min(Gap, Marks.Length - low)).Select(place => At(framing, Marks[place])).FirstOrDefault(each => each.Plan.Reached && passes(each))?.Plan.Magnification;
    }

    private PlannedFraming At(PlannedFraming framing, double magnification)
    {
        lock (_framings)
        {
            if (!_framings.TryGetValue((framing.Lens.Name, magnification), out var found))
            {
                found = FramingPlanner.Frame(kit, framing.Lens, new Magnification(magnification));
                _framings.Add((framing.Lens.Name, magnification), found);
            }

            return found;
        }
    }
}
