namespace StudioKit.Physics.Light.Solving;

/// <summary>Straight light on every patch of a box, averaged over Gauss points.</summary>
/// <remarks>
/// Nine points serve a patch. Where the plane of the flash's window cuts through it, light begins there with a kink, which nine points
/// would get wrong by up to a seventh of what the patch gets; so each side of the cut is averaged by itself.
/// </remarks>
internal sealed class PatchSamples
{
    private const int PointsPerPatch = 9;
    private static readonly double[] Nodes = [0.1127016653792583, 0.5, 0.8872983346207417];
    private static readonly double[] Weights = [5.0 / 18, 8.0 / 18, 5.0 / 18];

    private readonly Patch[] _patches;
    private readonly ReceiverSet _points;

    public PatchSamples(Patch[] patches)
    {
        _patches = patches;
        var points = new (Position Place, Direction Normal)[patches.Length * PointsPerPatch];
        for (var i = 0; i < patches.Length; i++)
        {
            Fill(points.AsSpan(i * PointsPerPatch, PointsPerPatch), patches[i], patches[i].Normal);
        }

        _points = new ReceiverSet(points);
    }

    /// <summary>Mean luminous exposure of every patch by one flash [lx·s].</summary>
    public double[] Exposures(DirectLight flash)
    {
        var arriving = Arriving(flash, _points);
        double[] exposures = [.. Enumerable.Range(0, _patches.Length).Select(i => Mean(arriving, i, isTriangle: false))];
        AverageCutPatches(flash, exposures);
        return exposures;
    }

    private void AverageCutPatches(DirectLight flash, double[] exposures)
    {
        var (place, axis) = flash.Window;
        List<(int Patch, Patch Piece)> pieces = [];
        for (var i = 0; i < _patches.Length; i++)
        {
            if (PatchPieces.IsCut(_patches[i], place, axis))
            {
                exposures[i] = 0;
                foreach (var piece in PatchPieces.Of(_patches[i], place, axis))
                {
                    pieces.Add((i, piece));
                }
            }
        }

        var points = new (Position Place, Direction Normal)[pieces.Count * PointsPerPatch];
        for (var k = 0; k < pieces.Count; k++)
        {
            Fill(points.AsSpan(k * PointsPerPatch, PointsPerPatch), pieces[k].Piece, _patches[pieces[k].Patch].Normal);
        }

        var arriving = Arriving(flash, new ReceiverSet(points));
        for (var k = 0; k < pieces.Count; k++)
        {
            var (patch, piece) = pieces[k];
            exposures[patch] += Mean(arriving, k, isTriangle: true) * piece.Area / _patches[patch].Area;
        }
    }

    private static double[] Arriving(DirectLight flash, ReceiverSet points)
    {
        var arriving = new double[points.PaddedCount];
        flash.AddRoughlyTo(points, arriving);
        return arriving;
    }

    private static void Fill(Span<(Position Place, Direction Normal)> points, in Patch patch, Direction normal)
    {
        for (var i = 0; i < PointsPerPatch; i++)
        {
            var (row, column) = Math.DivRem(i, Nodes.Length);
            points[i] = (patch.At(Nodes[column], Nodes[row]), normal);
        }
    }

    // A triangle narrows to its last corner, so that a row of points counts by the width that is left there.
    private static double Mean(double[] arriving, int patch, bool isTriangle)
    {
        var sum = 0.0;
        for (var i = 0; i < PointsPerPatch; i++)
        {
            var (row, column) = Math.DivRem(i, Weights.Length);
            var width = isTriangle ? 2 * (1 - Nodes[row]) : 1;
            sum += Weights[row] * Weights[column] * width * arriving[(patch * PointsPerPatch) + i];
        }

        return sum;
    }
}
