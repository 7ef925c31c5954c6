namespace StudioKit.Benchmarks;

/// <summary>Work whose cost grows with the size of what it is done on.</summary>
/// <param name="Name">What is done, and what is counted, e.g. <c>log list, records</c>.</param>
/// <param name="Sizes">Sizes to do it on, at least two.</param>
/// <param name="Prepare">Makes ready for a size, and gives the work, which can be done again and again.</param>
internal sealed record GrowingCost(string Name, IReadOnlyList<int> Sizes, Func<int, Action> Prepare);
