using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Tables;
using UnitsNet;

namespace StudioKit.Planning.Tests.Cutting.Tables;

public sealed class CutTablesTests
{
    /// <summary>RFC 4180: quoted fields may hold commas, doubled quotes and line breaks.</summary>
    [Fact]
    public void Quoted_labels_may_hold_commas_and_quotes()
    {
        var table = CutTables.BarPieces("p.csv", "label,length,count\r\n\"leg, \"\"left\"\"\",3/4 in,2\r\n\r\n foot ,1 m,\r\n");

        table.Diagnostics.Should().BeEmpty();
        table.Rows[0].Label.Should().Be("leg, \"left\"");
        table.Rows[0].Length.Millimeters.Should().BeApproximately(19.05, 1e-9);
        table.Rows[1].Should().Match<StudioKit.Planning.Cutting.BarPiece>(piece => piece.Label == "foot" && piece.Count == 1);
    }

    /// <summary>Plain sums: 1,000 mm less 10 mm squared off, two pieces of 200 mm, kerf 3 mm after each.</summary>
    [Fact]
    public void The_table_of_a_plan_says_where_each_piece_starts_and_ends()
    {
        var plan = new FirstFitBarCutPlanner().Plan(new BarCutRequest
        {
            Pieces = [new BarPiece("leg", Length.FromMillimeters(200), 2)],
            Stock = [new StockBar("pipe", Length.FromMillimeters(1000), 4m)],
            Kerf = Length.FromMillimeters(3),
            Trim = Length.FromMillimeters(10),
        });

        CutPlanTables.Of(plan).ReplaceLineEndings("\n").Should().Be(
            "bar,stock,stockLengthMm,price,piece,lengthMm,startMm,endMm,offcutMm\n1,pipe,1000,4,leg,200,0,200,584\n1,pipe,1000,4,leg,200,203,403,584\n");
    }

    [Fact]
    public void Stock_without_count_is_endless_and_without_price_free()
    {
        var table = CutTables.Bars("s.csv", "length,price,count\n3 m,8.90,\n1450 mm,,3\n");

        table.Rows[0].Count.Should().BeNull();
        table.Rows[0].Price.Should().Be(8.90m);
        table.Rows[1].Should().Match<StudioKit.Planning.Cutting.StockBar>(bar => bar.Price == 0 && bar.Count == 3);
    }

    [Theory]
    [InlineData("", 1, 1, "KIT014")]
    [InlineData("label,length\n", 1, 1, "KIT014")]
    [InlineData("label,lenght,count\nA,1 m,1\n", 1, 7, "KIT003")]
    [InlineData("label,length,length\nA,1 m,1 m\n", 1, 14, "KIT004")]
    [InlineData("label,count\nA,1\n", 1, 1, "KIT005")]
    [InlineData("label,length,count\nA,1,5 m,1\n", 2, 1, "KIT006")]
    [InlineData("label,length,count\nA,1000,1\n", 2, 3, "KIT001")]
    [InlineData("label,length,count\nA,1 m,0\n", 2, 7, "KIT001")]
    [InlineData("label,length,count\nA,1 m,-1\n", 2, 7, "KIT001")]
    [InlineData("label,length,count\nA,1 m,two\n", 2, 7, "KIT001")]
    [InlineData("label,length,count\nA,0 mm,1\n", 2, 3, "KIT002")]
    public void A_fault_is_named_with_its_place(string text, int line, int column, string code)
    {
        var table = CutTables.BarPieces("p.csv", text);

        table.Rows.Should().BeEmpty();
        table.Diagnostics[0].Should().Match<StudioKit.Kits.Diagnostic>(fault =>
            fault.File == "p.csv" && fault.Line == line && fault.Column == column && fault.Code == code);
    }

    [Fact]
    public void All_faults_are_shown_at_once() =>
        CutTables.SheetPieces("p.csv", "label,width,height,count,turn\nA,1,1 m,1,maybe\nB,1 m,x,0,no\n").Diagnostics.Should().HaveCount(4);

    [Fact]
    public void Any_text_is_read_or_refused_without_an_exception() =>
        Gen.String.Sample(text => CutTables.Bars("s.csv", "length,price,count\n" + text) is not null);
}
