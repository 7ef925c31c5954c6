using StudioKit.Planning;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>What is changed at an upright sheet, in words.</summary>
internal static class RestandText
{
    /// <summary>A change as something to do, without its full stop.</summary>
    public static string Of(KitChange.Restand change) => string.Join(", and ", Parts(change));

    /// <summary>Mass as a spring balance reads it.</summary>
    public static string Kilograms(Mass mass) => MeasureFormat.Kilograms(mass);

    private static IEnumerable<string> Parts(KitChange.Restand change)
    {
        var sheet = change.Stand;
        if (change.Straight)
        {
            yield return $"Let the {sheet} stand straight";
        }

        if (change.Ballast is { } ballast)
        {
            yield return $"Lay {Kilograms(ballast)} in all on the feet of the {sheet}";
        }

        if (change.FootLength is { } foot)
        {
            yield return $"Give the {sheet} feet {DistanceFormat.Centimetres(foot)} long";
        }

        if (change.Thickness is { } thickness)
        {
            yield return $"Cut the {sheet} from a sheet of {PlanFormat.Millimetres(thickness)}";
        }

        if (change.Width is not null || change.Height is not null)
        {
            yield return $"Cut the {sheet} down to {string.Join(" and ", new[] { (Side: "width", Size: change.Width), (Side: "height", Size: change.Height) }.Where(side => side.Size is not null).Select(side => $"a {side.Side} of {PlanFormat.Millimetres(side.Size!.Value)}"))}";
        }

        if (change.CordPegs is { } pegs)
        {
            yield return FormattableString.Invariant($"Hold the {sheet} with cords from its upper corners to {pegs} pegs") + (change.PegHold is { } hold ? $", if each holds {Kilograms(hold)} when you pull it" : "");
        }
    }
}
