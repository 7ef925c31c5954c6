using System.Text.Json;

namespace StudioKit.Cli.Tests.Commands;

public sealed class CutCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>Ten pieces of 1000 mm from bars of 3000 mm need five bars with a kerf of 3 mm: two a bar, plain arithmetic.</summary>
    [Fact]
    public void A_bar_job_prints_its_plan_as_json()
    {
        var run = Cut("label,length,count\nrail,1000 mm,10\n", "length,price,count\n3000 mm,4.50,\n", "--kerf", "3 mm", "--json");

        run.ExitCode.Should().Be(0, run.Error);
        var json = JsonDocument.Parse(run.Output).RootElement;
        json.GetProperty("totalBars").GetInt32().Should().Be(5);
        json.GetProperty("totalCost").GetDecimal().Should().Be(22.5m);
        json.GetProperty("lowerBound").GetDecimal().Should().Be(22.5m);
        json.GetProperty("provenOptimal").GetBoolean().Should().BeTrue();
        var bar = json.GetProperty("bars")[0];
        bar.GetProperty("stockLengthMm").GetDouble().Should().Be(3000);
        bar.GetProperty("pieces")[1].GetProperty("startMm").GetDouble().Should().Be(1003);
    }

    [Fact]
    public void A_piece_too_long_for_all_stock_ends_with_one()
    {
        var run = Cut("label,length,count\nmast,4 m,1\n", "length,price,count\n3000 mm,4.50,\n", "--json");

        run.ExitCode.Should().Be(1);
        run.Error.Should().Contain("'mast' (4000 mm) is larger than any stock allows");
        JsonDocument.Parse(run.Output).RootElement.GetProperty("provenOptimal").GetBoolean().Should().BeFalse();
    }

    [Fact]
    public void A_length_without_a_unit_is_shown_in_its_place()
    {
        var run = Cut("label,length,count\nrail,1000,10\n", "length,price,count\n3000 mm,4.50,\n");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("pieces.csv(2,6): error KIT001");
        run.Output.Should().BeEmpty();
    }

    [Fact]
    public void A_missing_file_is_file_trouble()
    {
        var run = CommandRun.Of("cut", "--pieces", _folder.File("none.csv"), "--stock", _folder.File("none.csv"));

        run.ExitCode.Should().Be(3);
    }

    [Fact]
    public void Pieces_without_stock_are_bad_usage() =>
        CommandRun.Of("cut", "--pieces", "pieces.csv").ExitCode.Should().Be(2);

    [Fact]
    public void A_sheet_job_prints_places_and_cuts()
    {
        File.WriteAllText(_folder.File("panels.csv"), "label,width,height,count,turn\nskirt,330 mm,250 mm,3,yes\n");
        File.WriteAllText(_folder.File("sheets.csv"), "width,height,price,count\n1000 mm,500 mm,38,\n");
        var run = CommandRun.Of(
            "cut", "--sheet-pieces", _folder.File("panels.csv"), "--sheets", _folder.File("sheets.csv"), "--kerf", "3 mm", "--json");

        run.ExitCode.Should().Be(0, run.Error);
        var json = JsonDocument.Parse(run.Output).RootElement;
        json.GetProperty("totalSheets").GetInt32().Should().Be(1);
        json.GetProperty("sheets")[0].GetProperty("pieces").GetArrayLength().Should().Be(3);
        json.GetProperty("sheets")[0].GetProperty("cuts").GetArrayLength().Should().BeGreaterThanOrEqualTo(3);
    }

    private CommandRun Cut(string pieces, string stock, params string[] more)
    {
        File.WriteAllText(_folder.File("pieces.csv"), pieces);
        File.WriteAllText(_folder.File("stock.csv"), stock);
        return CommandRun.Of(["cut", "--pieces", _folder.File("pieces.csv"), "--stock", _folder.File("stock.csv"), .. more]);
    }

    [Fact]
    public void A_label_that_a_spreadsheet_would_work_out_is_written_as_text()
    {
        File.WriteAllText(_folder.File("pieces.csv"), "label,length,count\n\"=cmd|' /C x'!A1\",400 mm,1\n");
        File.WriteAllText(_folder.File("stock.csv"), "length\n1 m\n");

        var run = CommandRun.Of("cut", "--pieces", _folder.File("pieces.csv"), "--stock", _folder.File("stock.csv"), "--csv");

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain(",'=cmd|").And.NotContain(",=cmd");
    }

    [Fact]
    public void A_table_without_end_is_not_read_to_its_end()
    {
        File.WriteAllText(_folder.File("pieces.csv"), new string('x', 3_000_000));
        File.WriteAllText(_folder.File("stock.csv"), "length\n1 m\n");

        var run = CommandRun.Of("cut", "--pieces", _folder.File("pieces.csv"), "--stock", _folder.File("stock.csv"));

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("larger than");
    }
}
