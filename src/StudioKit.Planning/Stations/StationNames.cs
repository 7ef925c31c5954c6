using System.Globalization;

namespace StudioKit.Planning.Stations;

/// <summary>What stations are called.</summary>
internal static class StationNames
{
    /// <summary>The name of the kit at a place; a kit that stands there several times goes by its name with a number.</summary>
    public static string Of(IReadOnlyList<Plan> plans, int place)
    {
        var before = plans.Take(place).Count(plan => plan.Kit.Name == plans[place].Kit.Name);
        return before == 0 ? plans[place].Kit.Name : string.Create(CultureInfo.InvariantCulture, $"{plans[place].Kit.Name} ({before + 1})");
    }
}
