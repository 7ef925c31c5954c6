namespace StudioKit.Physics.Structure;

/// <summary>A printed table read between its rows by straight lines, and held at its ends.</summary>
internal static class LinearTable
{
    public static double At(ReadOnlySpan<(double At, double Value)> rows, double at)
    {
        for (var i = 1; i < rows.Length; i++)
        {
            if (at <= rows[i].At)
            {
                var share = Math.Max(0, (at - rows[i - 1].At) / (rows[i].At - rows[i - 1].At));
                return rows[i - 1].Value + (share * (rows[i].Value - rows[i - 1].Value));
            }
        }

        return rows[^1].Value;
    }
}
