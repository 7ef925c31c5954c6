using StudioKit.Physics;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Planning.Expected;

/// <summary>How far a flash beneath the panel has to stand from it for so much more or less light on the darkest visible place.</summary>
public static class MovedFlash
{
    // A fifth of a stop to a step; within one the light changes evenly enough.
    private const double Step = 0.93;
    private const int MostSteps = 20;

    /// <summary>Distance by the inverse square law, where nothing but the distance is known.</summary>
    /// <param name="distance">Distance d now; &gt; 0.</param>
    /// <param name="change">Stops s more (positive) or less light [1].</param>
    /// <param name="shortest">How near the flash can stand.</param>
    /// <returns>d·2^(−s/2); none where the flash cannot stand so near.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not above zero, or the change is not finite.</exception>
    [Source("Derived", "inverse square law")]
    public static Length? ByInverseSquare(Length distance, double change, Length shortest)
    {
        Guard.Positive(distance.Meters, nameof(distance));
        var moved = distance * Math.Pow(2, -Guard.Finite(change) / 2);
        return moved >= shortest ? moved : null;
    }

    /// <summary>Distance at which a plan's own light changes by so much on the darkest visible place.</summary>
    /// <param name="distance">Distance now; &gt; 0.</param>
    /// <param name="change">Stops more (positive) or less light [1].</param>
    /// <param name="shortest">How near the flash can stand.</param>
    /// <param name="darkestAt">Margin of the darkest visible place at a distance, in stops on any scale; none where the geometry is impossible.</param>
    /// <returns>The distance; none where there is none that will do, since a flash that comes closer also lights less evenly.</returns>
    /// <remarks>Goes step by step until the change is reached and lays a straight line through the last step; the inverse square law stands in where no light is planned at the distance now.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="darkestAt"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not above zero, or the change is not finite.</exception>
    [Source("Derived", "linear interpolation between planned margins")]
    public static Length? ByPlan(Length distance, double change, Length shortest, Func<Length, double?> darkestAt)
    {
        ArgumentNullException.ThrowIfNull(darkestAt);
        Guard.Positive(distance.Meters, nameof(distance));
        return Guard.Finite(change) != 0 && darkestAt(distance) is { } now ? Walked(distance, change, shortest, place => darkestAt(place) - now) : ByInverseSquare(distance, change, shortest);
    }

    private static Length? Walked(Length distance, double change, Length shortest, Func<Length, double?> gainAt)
    {
        var (gained, sign) = (0.0, Math.Sign(change));
        for (var step = 0; step < MostSteps; step++)
        {
            var next = distance * Math.Pow(Step, sign);
            if (next < shortest || gainAt(next) is not { } gain || sign * gain <= sign * gained)
            {
                return null;
            }

            if (sign * gain >= sign * change)
            {
                return distance + ((next - distance) * ((change - gained) / (gain - gained)));
            }

            (distance, gained) = (next, gain);
        }

        return null;
    }
}
