using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Sheets;

/// <summary>Every set of pieces that some sheet of the job holds, with the smallest rectangles that hold it.</summary>
/// <remarks>
/// Whatever edge-to-edge cuts take apart, two parts put together: the rectangles of a set come from those of every way of
/// splitting it in two, side by side or one above the other. Of these only the ones that no other undercuts in both sides are
/// kept. The list is complete, and plans built on it are exact, unless it ran out of room.
/// </remarks>
internal sealed class PackableSets
{
    // Keeps memory to some hundred megabytes.
    private const int MostSets = 200_000;

    private readonly SheetJob _job;
    private readonly long[] _strides;
    private readonly long _mostArea;
    private readonly Dictionary<long, PackableSet> _sets = [];
    private readonly CancellationToken _cancellationToken;
    private long _joinsLeft;

    private PackableSets(SheetJob job, long joins, CancellationToken cancellationToken)
    {
        _job = job;
        _joinsLeft = joins;
        _cancellationToken = cancellationToken;
        _mostArea = job.Stock.Max(sheet => sheet.Area);
        _strides = new long[job.Kinds.Length];
        var stride = 1L;
        for (var i = 0; i < _strides.Length; i++)
        {
            _strides[i] = stride;
            stride = checked(stride * (job.Kinds[i].Demand + 1));
        }
    }

    /// <summary>Whether the list lacks nothing.</summary>
    public bool Complete => _joinsLeft > 0 && _sets.Count < MostSets && !_cancellationToken.IsCancellationRequested;

    public IReadOnlyCollection<PackableSet> Sets => _sets.Values;

    /// <summary>Lists them, smallest sets first.</summary>
    /// <param name="job">The job; it needs stock.</param>
    /// <param name="joins">How many joins of two sets may be tried.</param>
    /// <param name="cancellationToken">Ends the listing early.</param>
    /// <returns>The list; null where the job has more combinations than can be numbered.</returns>
    public static PackableSets? List(SheetJob job, long joins, CancellationToken cancellationToken)
    {
        if (job.Kinds.Sum(kind => Math.Log2(kind.Demand + 1)) > 60)
        {
            return null;
        }

        var sets = new PackableSets(job, joins, cancellationToken);
        sets.Grow();
        return sets;
    }

    /// <summary>The set with exactly these pieces; null where no sheet holds it.</summary>
    public PackableSet? Find(int[] counts) => _sets.GetValueOrDefault(Key(counts));

    private void Grow()
    {
        var level = new List<PackableSet>();
        for (var i = 0; i < _job.Kinds.Length; i++)
        {
            var single = new PackableSet(Single(i), _job.Kinds[i].Area);
            foreach (var lying in _job.Kinds[i].Lying(i).Where(SomeSheetHolds))
            {
                single.Offer(lying);
            }

            Keep(single, level);
        }

        while (level.Count > 0 && Complete)
        {
            level = Next(level);
        }
    }

    /// <summary>Sets with one piece more.</summary>
    private List<PackableSet> Next(List<PackableSet> level)
    {
        var next = new List<PackableSet>();
        var seen = new HashSet<long>();
        foreach (var smaller in level)
        {
            for (var i = 0; i < _strides.Length && Complete; i++)
            {
                if (smaller.Counts[i] < _job.Kinds[i].Demand && seen.Add(Key(smaller.Counts) + _strides[i]))
                {
                    int[] counts = [.. smaller.Counts];
                    counts[i]++;
                    Keep(Joined(counts, smaller.Area + _job.Kinds[i].Area), next);
                }
            }
        }

        return next;
    }

    private PackableSet Joined(int[] counts, long area)
    {
        var set = new PackableSet(counts, area);
        if (area <= _mostArea && EverySmallerOneIsPackable(counts))
        {
            Split(set, new int[counts.Length], 0, 0, Key(counts));
        }

        return set;
    }

    private bool EverySmallerOneIsPackable(int[] counts)
    {
        var key = Key(counts);
        for (var i = 0; i < counts.Length; i++)
        {
            if (counts[i] > 0 && !_sets.ContainsKey(key - _strides[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Tries every way of splitting a set in two, each once.</summary>
    private void Split(PackableSet whole, int[] part, int kind, long partKey, long wholeKey)
    {
        if (kind == part.Length)
        {
            if (partKey > 0 && partKey <= wholeKey - partKey)
            {
                Join(whole, _sets[partKey], _sets[wholeKey - partKey]);
            }

            return;
        }

        for (var n = 0; n <= whole.Counts[kind]; n++)
        {
            part[kind] = n;
            Split(whole, part, kind + 1, partKey + (n * _strides[kind]), wholeKey);
        }
    }

    private void Join(PackableSet whole, PackableSet first, PackableSet second)
    {
        foreach (var a in first.Layouts)
        {
            foreach (var b in second.Layouts)
            {
                _joinsLeft--;
                Offer(whole, Layout.Beside(a, b));
                Offer(whole, Layout.Above(a, b));
            }
        }
    }

    private void Offer(PackableSet set, Layout layout)
    {
        if (SomeSheetHolds(layout))
        {
            set.Offer(layout);
        }
    }

    private bool SomeSheetHolds(Layout layout) => Array.Exists(_job.Stock, sheet => sheet.Holds(layout));

    private void Keep(PackableSet set, List<PackableSet> level)
    {
        if (set.Layouts.Count > 0)
        {
            _sets.Add(Key(set.Counts), set);
            level.Add(set);
        }
    }

    private int[] Single(int kind)
    {
        var counts = new int[_job.Kinds.Length];
        counts[kind] = 1;
        return counts;
    }

    private long Key(int[] counts)
    {
        var key = 0L;
        for (var i = 0; i < counts.Length; i++)
        {
            key += counts[i] * _strides[i];
        }

        return key;
    }
}
