using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Cutting.Tests;

/// <summary>Cutting-stock and bin-packing jobs with a published optimum.</summary>
internal static class PublishedBarJobs
{
    /// <summary>Paper rolls of the online encyclopaedia's article "Cutting stock problem": 73 rolls, ten patterns at least.</summary>
    public static BarCutRequest PaperRolls { get; } = Job(
        5600,
        [
            (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20), (2000, 10), (2050, 12), (2100, 14),
            (2140, 16), (2150, 18), (2200, 20),
        ]);

    /// <summary>Chvátal, Linear Programming, Freeman 1983, ch. 13 (data on the NEOS guide's cutting-stock page): 453.</summary>
    public static BarCutRequest Chvatal1983 { get; } = Job(100, [(45, 97), (36, 610), (31, 395), (14, 211)]);

    /// <summary>Fourer, Gay and Kernighan, AMPL: A Modeling Language for Mathematical Programming, ch. 15: 47.</summary>
    public static BarCutRequest FourerGayKernighan { get; } = Job(110, [(20, 48), (45, 35), (50, 24), (55, 10), (75, 8)]);

    /// <summary>The boards of 17 ft exercise of operations research textbooks (from memory, checked by pattern arithmetic): 19.</summary>
    public static BarCutRequest Boards { get; } = Job(17, [(3, 25), (5, 20), (9, 15)]);

    /// <summary>The textbook example without the round-up property (from memory): 3, though the plain relaxation rounds up to 2.</summary>
    public static BarCutRequest NoRoundUp { get; } = Job(132, [(44, 2), (33, 3), (12, 6)]);

    /// <summary>Falkenauer t60_00 of the OR-Library, sizes times ten: 20, every bar full.</summary>
    public static BarCutRequest FalkenauerT60 { get; } = Job(
        1000,
        [
            495, 474, 473, 472, 466, 450, 445, 444, 439, 430, 419, 414, 410, 395, 372, 370, 366, 366, 366, 363, 361, 357, 355, 351, 350,
            350, 347, 320, 315, 307, 303, 299, 298, 298, 292, 288, 287, 283, 275, 275, 274, 273, 273, 272, 272, 271, 269, 269, 268, 263,
            262, 261, 259, 258, 255, 254, 252, 252, 252, 251,
        ]);

    /// <summary>Scholl N1C1W1_A (BPPLIB bounds file): 25.</summary>
    public static BarCutRequest SchollN1C1W1A { get; } = Job(
        100,
        [
            99, 99, 96, 96, 92, 92, 91, 88, 87, 86, 85, 76, 74, 72, 69, 67, 67, 62, 61, 56, 52, 51, 49, 46, 44, 42, 40, 40, 33, 33, 30, 30,
            29, 28, 28, 27, 25, 24, 23, 22, 21, 20, 17, 14, 13, 11, 10, 7, 7, 3,
        ]);

    /// <summary>Scholl N1C2W2_B (BPPLIB bounds file): 27, one above the bound by total length.</summary>
    public static BarCutRequest SchollN1C2W2B { get; } = Job(
        120,
        [
            100, 98, 98, 97, 95, 94, 90, 90, 89, 86, 85, 83, 81, 79, 79, 74, 72, 72, 71, 68, 67, 65, 64, 64, 62, 59, 58, 56, 55, 55, 54, 51,
            51, 50, 47, 46, 45, 44, 43, 40, 36, 34, 33, 31, 29, 28, 27, 27, 26, 21,
        ]);

    /// <summary>PM_u010_01 of the BPPLib.jl data: 5.</summary>
    public static BarCutRequest TinyU010 { get; } = Job(150, [96, 78, 76, 74, 67, 59, 58, 52, 44, 24]);

    /// <summary>PM_u020_04 of the BPPLib.jl data: 7, where first-fit decreasing needs 8.</summary>
    public static BarCutRequest TinyU020 { get; } = Job(
        150, [96, 93, 91, 69, 67, 64, 62, 54, 51, 49, 47, 46, 44, 35, 32, 29, 27, 25, 24, 23]);

    public static BarCutRequest Job(double stock, (double Length, int Count)[] pieces, double kerf = 0) => new()
    {
        Pieces = [.. pieces.Select((piece, i) => new BarPiece($"P{i}", Length.FromMillimeters(piece.Length), piece.Count))],
        Stock = [new StockBar("bar", Length.FromMillimeters(stock), 1)],
        Kerf = Length.FromMillimeters(kerf),
    };

    private static BarCutRequest Job(double stock, int[] lengths) => Job(stock, [.. lengths.Select(length => ((double)length, 1))]);
}
