using System.Numerics;
using StudioKit.Physics.Light.Obstacles;

namespace StudioKit.Physics.Light.Solving;

/// <summary>The rays that decide which pairs of a box an obstacle stands between: one for each pair of patches, and of a point and a patch.</summary>
/// <remarks>
/// They are a quarter of a million, and most pass an obstacle by. So that this is seen of eight at once, the patches are dealt out in turn over four suits,
/// and a suit's places that the rays of one row look at lie side by side, a byte for the sides of each.
/// </remarks>
internal sealed class ShadowRays
{
    private const int Suits = 4;

    // Sides of places in a word.
    private const int Word = sizeof(ulong);
    private const ulong InEveryByte = 0x0101_0101_0101_0101;

    // Sides plus this have the highest bit of their byte where there is any side; sides are less than 128.
    private const ulong ToHighest = 0x7F * InEveryByte;
    private const ulong Highest = 0x80 * InEveryByte;

    // Rays between varying quarter points: a thin pipe then takes its share of the light on the whole, pair by pair at random.
    private static readonly (double S, double T)[] Quarters = [(0.25, 0.25), (0.75, 0.75), (0.75, 0.25), (0.25, 0.75)];

    private readonly Position[] _places;
    private readonly int _patches;
    private readonly int _senders;
    private readonly int _points;
    private readonly int _row;

    public ShadowRays(PatchMesh mesh, ReceiverSet points)
    {
        (_patches, _senders, _points) = (mesh.Patches.Length, mesh.SenderCount, points.Count);
        _row = (_patches + (Suits * Word) - 1) / (Suits * Word) * Word;
        _places = new Position[FirstPoint + _points];
        for (var i = 0; i < _patches; i++)
        {
            for (var quarter = 0; quarter < Quarters.Length; quarter++)
            {
                _places[Row(i & 3, quarter) + (i / Suits)] = mesh.Patches[i].At(Quarters[quarter].S, Quarters[quarter].T);
            }
        }

        for (var i = 0; i < _points; i++)
        {
            _places[FirstPoint + i] = points.Place(i);
        }
    }

    // Points come behind the quarters of all patches.
    private int FirstPoint => Row(Suits, 0);

    /// <summary>All pairs that an obstacle stands between; it depends on no other obstacle.</summary>
    public ShadowSet Of(Obstacle obstacle)
    {
        var sighted = new SightedPlaces(obstacle, _places);
        var sides = Packed(sighted.Sides);
        return new ShadowSet([.. BetweenPatches(sighted, sides)], [.. FromPoints(sighted, sides)]);
    }

    // The same ray serves both ways, so that the exchange stays reciprocal.
    private List<int> BetweenPatches(SightedPlaces sighted, ulong[] sides)
    {
        var (stride, blocked, hit) = (VectorMath.PaddedRow(_patches), new List<int>(), new List<int>());
        for (var i = 0; i < _patches; i++)
        {
            hit.Clear();
            for (var suit = 0; suit < Suits; suit++)
            {
                var from = Row(i & 3, (i + suit) & 3) + (i / Suits);
                AddHit(sighted, sides, from, (suit, (i + (3 * suit)) & 3), i + 1, _patches, hit);
            }

            foreach (var j in hit)
            {
                blocked.Add((i * stride) + j);
                blocked.Add((j * stride) + i);
            }
        }

        return blocked;
    }

    private List<int> FromPoints(SightedPlaces sighted, ulong[] sides)
    {
        var (stride, blocked, hit) = (VectorMath.PaddedRow(_senders), new List<int>(), new List<int>());
        for (var i = 0; i < _points; i++)
        {
            hit.Clear();
            for (var suit = 0; suit < Suits; suit++)
            {
                AddHit(sighted, sides, FirstPoint + i, (suit, (i + suit) & 3), 0, _senders, hit);
            }

            foreach (var j in hit)
            {
                blocked.Add((i * stride) + j);
            }
        }

        return blocked;
    }

    // Adds those patches of one suit, seen at one of their quarters, that the obstacle hides from a place.
    private void AddHit(SightedPlaces sighted, ulong[] sides, int from, (int Suit, int Quarter) to, int first, int end, List<int> hit)
    {
        var mine = sighted.Sides[from] * InEveryByte;
        var row = Row(to.Suit, to.Quarter);
        for (var start = first / (Suits * Word) * Word; start * Suits < end; start += Word)
        {
            var open = ~((sides[(row + start) / Word] & mine) + ToHighest) & Highest;
            for (; open != 0; open &= open - 1)
            {
                var place = start + (BitOperations.TrailingZeroCount(open) / 8);
                var patch = (place * Suits) + to.Suit;
                if (patch >= first && patch < end && sighted.IsBetween(from, row + place))
                {
                    hit.Add(patch);
                }
            }
        }
    }

    // The first of eight places lowest.
    private ulong[] Packed(byte[] sides)
    {
        var packed = new ulong[FirstPoint / Word];
        for (var i = 0; i < FirstPoint; i++)
        {
            packed[i / Word] |= (ulong)sides[i] << (i % Word * 8);
        }

        return packed;
    }

    private int Row(int suit, int quarter) => ((suit * Quarters.Length) + quarter) * _row;
}
