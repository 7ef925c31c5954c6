using StudioKit.Physics;

namespace StudioKit.Kits.Tests.Editing;

/// <summary>Lists with one entry changed, as records have <c>with</c>.</summary>
internal static class ListWith
{
    public static ValueList<T> At<T>(this ValueList<T> list, int place, Func<T, T> change) => [.. list.Select((item, at) => at == place ? change(item) : item)];
}
