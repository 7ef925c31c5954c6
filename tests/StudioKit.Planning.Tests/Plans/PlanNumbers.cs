using System.Collections;
using System.Reflection;
using UnitsNet;

namespace StudioKit.Planning.Tests.Plans;

/// <summary>Walks every property of a plan.</summary>
internal static class PlanNumbers
{
    /// <summary>Paths of all numbers that are not finite.</summary>
    public static IEnumerable<string> NotFinite(object? value, string path = "plan") => value switch
    {
        null or string or bool or Enum or decimal or int or long or byte => [],
        double number => double.IsFinite(number) ? [] : [path],
        IQuantity quantity => double.IsFinite((double)quantity.Value) ? [] : [path],
        IEnumerable list => list.Cast<object?>().SelectMany((item, i) => NotFinite(item, $"{path}[{i}]")),
        _ => value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0 && !IsNeighbour(property, value))
            .SelectMany(property => NotFinite(property.GetValue(value), $"{path}.{property.Name}")),
    };

    // The click above a click of a dial is no part of it, and a walk over neighbours would never end.
    private static bool IsNeighbour(PropertyInfo property, object value) => property.PropertyType == value.GetType();
}
