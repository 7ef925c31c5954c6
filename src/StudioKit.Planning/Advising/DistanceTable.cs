using StudioKit.Physics;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>Which power the exposure asks for when one of its flashes stands elsewhere: each distance is planned, and those that ask for anything else to be changed are left out.</summary>
internal sealed class DistanceTable(Replanner replanner, ExposurePlan now)
{
    private static readonly double[] Shares = [0.5, 0.6, 0.7, 0.85, 1, 1.2, 1.4, 1.7, 2];

    // Nearer than this nobody holds a flash to an even light.
    private const double NearestCentimetres = 5;

    /// <summary>Distances of every flash that can stand elsewhere.</summary>
    public IEnumerable<LightDistances> OfAll() => now.Lights
        .DistinctBy(light => light.Place)
        .Select(light => new LightDistances(light, [.. Of(light)]))
        .Where(distances => distances.Steps.Count > 1);

    /// <summary>Distances of one flash, nearest first.</summary>
    public IEnumerable<DistanceStep> Of(LightPlan light) => Shares
        .Select(share => Math.Round(light.Distance.Centimeters * share))
        .Where(centimetres => centimetres >= NearestCentimetres)
        .Append(light.Distance.Centimeters)
        .DistinctBy(Math.Round)
        .Order()
        .Select(centimetres => At(light, Length.FromCentimeters(centimetres)))
        .OfType<DistanceStep>();

    private DistanceStep? At(LightPlan light, Length distance)
    {
        ValueList<KitChange> changes = [new KitChange.Move(now.SetUp, light.Place, distance)];
        if (replanner.Plan(now, changes) is not { IsUsable: true } planned || !OnlyPowers(planned))
        {
            return null;
        }

        var there = planned.Lights.First(other => other.Place == light.Place);
        return new DistanceStep(distance, there.Mark, new Advice(changes, planned), IsHere(light, distance)) { ExactShare = Math.Min(1, there.ExactPower.Ratio) };
    }

    private static bool IsHere(LightPlan light, Length distance) => Math.Round(distance.Centimeters) == Math.Round(light.Distance.Centimeters);

    private bool OnlyPowers(ExposurePlan planned) =>
        planned.Iso == now.Iso && planned.Shutter == now.Shutter && planned.Aperture == now.Aperture && planned.Verdict.Verdict <= now.Verdict.Verdict;
}
