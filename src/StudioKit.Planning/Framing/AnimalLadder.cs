using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>From an animal's length to the cards that show it whole and largest.</summary>
internal static class AnimalLadder
{
    // Fields of the same magnification differ by less than a rounding of their marks.
    private static readonly Length Same = Length.FromMicrometers(50);

    /// <summary>The rungs of all exposures that can be taken, shortest animals first; each begins where the one before ends.</summary>
    public static ValueList<AnimalRung> Of(IReadOnlyList<ExposurePlan> exposures)
    {
        var usable = exposures.Where(exposure => exposure.IsUsable).ToList();
        var over = Length.Zero;
        var rungs = new List<AnimalRung>();
        foreach (var end in usable.Select(exposure => exposure.Framing.LongestWhole).Order())
        {
            if (end - over > Same)
            {
                rungs.Add(new AnimalRung(over, end, [.. usable.GroupBy(exposure => exposure.SetUp).SelectMany(setUp => Closest(setUp, end))]));
                over = end;
            }
        }

        return [.. rungs];
    }

    private static IEnumerable<RungCard> Closest(IEnumerable<ExposurePlan> setUp, Length animal)
    {
        var whole = setUp.Where(exposure => exposure.Framing.LongestWhole + Same >= animal).ToList();
        return whole.Count == 0 ? [] : whole
            .Where(exposure => exposure.Framing.LongestWhole - whole.Min(each => each.Framing.LongestWhole) <= Same)
            .Select(exposure => new RungCard(exposure.SetUp, exposure.Framing.Name));
    }
}
