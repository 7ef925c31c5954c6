using StudioKit.Kits;
using StudioKit.Kits.Tests;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Tables;
using UnitsNet;

namespace StudioKit.Planning.Tests.Hostile;

/// <summary>Whatever a cut table holds, it is read or diagnosed, and what was read can be planned.</summary>
public sealed class HostileTablesTests
{
    private const string Pieces = "label,length,count\nleg,480 mm,4\nrail,560 mm,4\n\"tee, short\",11 mm,2\n";
    private const string Stock = "length,price,count\n3 m,4.40,\n1 m,0,2\n";
    private const string Panels = "label,width,height,count,turn\npanel,600 mm,400 mm,1,no\nskirt,600 mm,300 mm,4,yes\n";
    private const string Sheets = "width,height,price,count\n1000 mm,500 mm,24,\n";

    private const int Planned = 300;

    [Fact]
    public void Damaged_tables_of_bars_are_planned_or_diagnosed() => Gen.Select(HostileText.Of(Pieces), HostileText.Redigited(Stock)).Sample((pieces, stock) =>
    {
        var (wanted, bars) = (CutTables.BarPieces("pieces.csv", pieces), CutTables.Bars("stock.csv", stock));
        IsReadOrDiagnosed(wanted);
        IsReadOrDiagnosed(bars);
        if (wanted.Sound && bars.Sound && wanted.Rows.Sum(piece => piece.Count) <= Planned)
        {
            new FirstFitBarCutPlanner().Plan(new BarCutRequest { Pieces = wanted.Rows, Stock = bars.Rows, Kerf = Length.FromMillimeters(3), Trim = Length.Zero }).Should().NotBeNull();
        }
    }, iter: RandomFiles.Runs, threads: 1);

    [Fact]
    public void Damaged_tables_of_sheets_are_planned_or_diagnosed() => Gen.Select(HostileText.Redigited(Panels), HostileText.Of(Sheets)).Sample((pieces, sheets) =>
    {
        var (wanted, stock) = (CutTables.SheetPieces("pieces.csv", pieces), CutTables.Sheets("sheets.csv", sheets));
        IsReadOrDiagnosed(wanted);
        IsReadOrDiagnosed(stock);
        if (wanted.Sound && stock.Sound && wanted.Rows.Sum(piece => piece.Count) <= Planned)
        {
            new FirstFitSheetCutPlanner().Plan(new SheetCutRequest { Pieces = wanted.Rows, Stock = stock.Rows, Kerf = Length.FromMillimeters(3), Trim = Length.Zero }).Should().NotBeNull();
        }
    }, iter: RandomFiles.Runs, threads: 1);

    [Fact]
    public void All_rows_together_ask_for_no_more_pieces_than_an_honest_list()
    {
        var rows = string.Concat(Enumerable.Repeat("leg,480 mm,7000\n", 3));

        CutTables.BarPieces("pieces.csv", "label,length,count\n" + rows).Diagnostics.Should().ContainSingle().Which.Code.Should().Be(DiagnosticCodes.TooMuch);
        CutTables.BarPieces("pieces.csv", "label,length,count\nleg,480 mm,7000\n").Sound.Should().BeTrue();
    }

    private static void IsReadOrDiagnosed<T>(CutTable<T> table) => (table.Rows.Count == 0).Should().Be(table.Diagnostics.Count > 0);
}
