namespace StudioKit.Sheets.Documents;

/// <summary>The reductions of ISO 5455, for drawings whose texts must find room and which therefore are laid out at their size on paper.</summary>
internal static class PaperScale
{
    private static readonly double[] Reductions = [1, 2, 5, 10, 20, 50, 100];

    /// <summary>The least reduction at which something fits.</summary>
    /// <param name="width">Width of the thing [mm].</param>
    /// <param name="height">Height of the thing [mm].</param>
    /// <param name="roomWidth">Width of the room on paper [mm].</param>
    /// <param name="roomHeight">Height of the room [mm].</param>
    public static double Of(double width, double height, double roomWidth, double roomHeight) =>
        Reductions.FirstOrDefault(reduction => width / reduction <= roomWidth && height / reduction <= roomHeight, Reductions[^1]);
}
