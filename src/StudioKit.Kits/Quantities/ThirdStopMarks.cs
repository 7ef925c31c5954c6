namespace StudioKit.Kits.Quantities;

/// <summary>Marks on cameras and flashes are rounded; this gives the exact third stop that a mark stands for.</summary>
/// <remarks>
/// f/11 stands for 2^(7/2) = 11.31, 1/60 s for 1/64 s, power 1/6.4 for 2^(−8/3). A mark is taken to be the nearest third stop if it is within the
/// roundings in use (3 % for f-numbers, 7 % for times, 4 % for powers), all well under half a step (6 % and 12 %); any other number stays as written.
/// </remarks>
internal static class ThirdStopMarks
{
    public static double FNumber(double marked) => Nearest(marked, stepsPerDoubling: 6, tolerance: 0.03);

    public static double Time(double marked) => Nearest(marked, stepsPerDoubling: 3, tolerance: 0.07);

    public static double Power(double marked) => Nearest(marked, stepsPerDoubling: 3, tolerance: 0.04);

    private static double Nearest(double marked, int stepsPerDoubling, double tolerance)
    {
        var exact = Math.Pow(2, Math.Round(Math.Log2(marked) * stepsPerDoubling) / stepsPerDoubling);
        return Math.Abs((marked / exact) - 1) <= tolerance ? exact : marked;
    }
}
