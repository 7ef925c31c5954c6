using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using StudioKit.Sheets;

namespace StudioKit.Cli.Running;

/// <summary>Makes sheets that do not need each other beside each other, on as many processors as there are.</summary>
internal static class SheetsAbreast
{
    /// <summary>Makes all files.</summary>
    /// <param name="groups">The groups of files.</param>
    /// <param name="abreast">How many groups may be made at a time; ≥ 1.</param>
    /// <param name="finish">What is done with each file as soon as it is made, on whatever thread made it.</param>
    /// <returns>What that gave, in the order of the groups, the same however many are made at a time.</returns>
    public static IReadOnlyList<T> Write<T>(IReadOnlyList<SheetGroup> groups, int abreast, Func<SheetFile, T> finish)
    {
        var made = new IReadOnlyList<T>[groups.Count];

        // Cards take longest; what is begun last should be short, so that no processor waits for another.
        var order = Enumerable.Range(0, groups.Count).OrderBy(i => groups[i].Kind != SheetGroupKind.Cards);
        try
        {
            Parallel.ForEach(
                Partitioner.Create(order, EnumerablePartitionerOptions.NoBuffering),
                new ParallelOptions { MaxDegreeOfParallelism = abreast },
                i => made[i] = [.. groups[i].Write().Select(finish)]);
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        return [.. made.SelectMany(files => files)];
    }
}
