namespace StudioKit.Planning.Session;

/// <summary>Groups of set-ups in the order of the day: from the brightest light to the darkest, those that name hours by when these begin.</summary>
internal static class BlockOrder
{
    /// <summary>The groups in order; those with hours share their places out among themselves.</summary>
    public static IReadOnlyList<LightGroup> Of(IReadOnlyList<LightGroup> groups)
    {
        var brightestFirst = groups.OrderByDescending(group => group.Planned.Brightest.AtIso100).ToList();
        var byClock = new Queue<LightGroup>(brightestFirst.Where(group => group.Clock is not null).OrderBy(group => group.Clock!.From));
        return [.. brightestFirst.Select(group => group.Clock is null ? group : byClock.Dequeue())];
    }
}
