using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning.Tests.Cutting;

/// <summary>Random cutting jobs in whole millimetres.</summary>
internal static class CutJobs
{
    public static readonly Gen<BarCutRequest> Bars =
        from pieces in Gen.Select(Gen.Int[40, 900], Gen.Int[1, 5]).Array[1, 6]
        from stock in Gen.Select(Gen.Int[500, 1500], Gen.Int[0, 20], Gen.Int[0, 3]).Array[1, 3]
        from kerf in Gen.Int[0, 4]
        from trim in Gen.Int[0, 10]
        select new BarCutRequest
        {
            Pieces = [.. pieces.Select((piece, i) => new BarPiece($"P{i}", Millimeters(piece.Item1), piece.Item2))],
            Stock =
            [
                .. stock.Select((bar, i) =>
                    new StockBar($"S{i}", Millimeters(bar.Item1), bar.Item2, bar.Item3 == 0 ? null : bar.Item3)),
            ],
            Kerf = Millimeters(kerf),
            Trim = Millimeters(trim),
        };

    public static readonly Gen<SheetCutRequest> Sheets =
        from pieces in Gen.Select(Gen.Int[40, 500], Gen.Int[40, 500], Gen.Int[1, 3], Gen.Bool).Array[1, 4]
        from stock in Gen.Select(Gen.Int[300, 1000], Gen.Int[300, 1000], Gen.Int[0, 20], Gen.Int[0, 3]).Array[1, 3]
        from kerf in Gen.Int[0, 4]
        from trim in Gen.Int[0, 10]
        select new SheetCutRequest
        {
            Pieces =
            [
                .. pieces.Select((piece, i) =>
                    new SheetPiece($"P{i}", Millimeters(piece.Item1), Millimeters(piece.Item2), piece.Item3, piece.Item4)),
            ],
            Stock =
            [
                .. stock.Select((sheet, i) => new StockSheet(
                    $"S{i}", Millimeters(sheet.Item1), Millimeters(sheet.Item2), sheet.Item3, sheet.Item4 == 0 ? null : sheet.Item4)),
            ],
            Kerf = Millimeters(kerf),
            Trim = Millimeters(trim),
        };

    private static Length Millimeters(int value) => Length.FromMillimeters(value);
}
