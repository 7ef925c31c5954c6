using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Documents;

/// <summary>Remembers where something is written already, so that labels do not cover each other.</summary>
internal sealed class FreePlaces
{
    private readonly List<Bounds> _taken = [];

    /// <summary>Takes a place whether or not it is free.</summary>
    public void Take(Bounds place) => _taken.Add(place);

    /// <summary>The first of some places that is free, and takes it; none where all are taken.</summary>
    public Point? FirstFree(IEnumerable<Point> candidates, Func<Point, Bounds> around)
    {
        foreach (var candidate in candidates)
        {
            var place = around(candidate);
            if (!_taken.Any(taken => Touch(taken, place)))
            {
                _taken.Add(place);
                return candidate;
            }
        }

        return null;
    }

    private static bool Touch(Bounds a, Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
