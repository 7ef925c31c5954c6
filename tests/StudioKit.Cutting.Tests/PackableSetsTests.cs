using StudioKit.Cutting.Sheets;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Kernel;
using UnitsNet;

namespace StudioKit.Cutting.Tests;

/// <summary>Most valuable set of pieces on one sheet, against optima published for the OR-Library's two-dimensional jobs.</summary>
/// <remarks>
/// cgcut: Christofides and Whitlock, Operations Research 25 (1977), edge-to-edge cuts, copies limited, fixed orientation unless said.
/// ngcut: Beasley, Operations Research 33 (1985), published without the edge-to-edge rule; the optimum under the rule is the same.
/// gcut: Beasley, Journal of the Operational Research Society 36 (1985), edge-to-edge cuts, any number of copies, value is area.
/// OF2: Oliveira and Ferreira, European Journal of Operational Research 44 (1990), copies limited.
/// Data and optima as on the OR-Library pages and the collections that repeat them.
/// </remarks>
public sealed class PackableSetsTests
{
    private const string Cgcut1 = "8 4 2 66 | 3 7 1 35 | 8 2 3 24 | 3 4 5 17 | 3 3 2 11 | 3 2 2 8 | 2 1 1 2";
    private const string Ngcut1 = "3 7 2 35 | 8 2 2 40 | 10 2 1 27 | 5 4 3 23 | 2 9 2 43";
    private const string Ngcut4 = "15 2 2 34 | 7 3 1 27 | 9 1 1 14 | 8 3 1 71 | 12 2 2 61";

    private const string Ngcut6 =
        "2 9 1 50 | 10 2 3 29 | 2 4 1 11 | 2 8 2 30 | 3 8 1 46 | 4 1 1 7 | 6 4 3 32 | 10 3 1 74 | 11 2 1 48 | 4 5 1 32";

    private const string Ngcut10 = "1 30 3 75 | 25 7 1 279 | 27 9 3 409 | 30 2 3 65 | 26 7 3 235";

    private const string OliveiraFerreira2 =
        "22 18 2 396 | 40 10 1 400 | 13 27 3 351 | 23 18 2 414 | 29 8 4 232 | 16 4 1 64 | 47 9 1 423 | 19 19 4 361 | 13 16 2 208 | 36 16 4 576";

    private const string Gcut1 =
        "167 184 | 114 118 | 167 152 | 83 140 | 70 86 | 143 166 | 120 160 | 66 148 | 87 141 | 69 165";

    private const string Gcut5 =
        "198 205 | 179 155 | 364 236 | 272 147 | 352 145 | 343 245 | 132 174 | 164 250 | 282 356 | 342 151";

    [Theory]
    [InlineData(nameof(Cgcut1), Cgcut1, 15, 10, false, 244)]
    [InlineData(nameof(Cgcut1), Cgcut1, 15, 10, true, 260)]
    [InlineData(nameof(Ngcut1), Ngcut1, 10, 10, false, 164)]
    [InlineData(nameof(Ngcut4), Ngcut4, 15, 10, false, 268)]
    [InlineData(nameof(Ngcut6), Ngcut6, 15, 10, false, 289)]
    [InlineData(nameof(Ngcut10), Ngcut10, 30, 30, false, 1452)]
    [InlineData(nameof(OliveiraFerreira2), OliveiraFerreira2, 70, 40, false, 2690)]
    [InlineData(nameof(Gcut1), Gcut1, 250, 250, false, 56460)]
    [InlineData(nameof(Gcut1), Gcut1, 250, 250, true, 58136)]
    [InlineData(nameof(Gcut5), Gcut5, 500, 500, false, 246000)]
    [InlineData(nameof(Gcut5), Gcut5, 500, 500, true, 246000)]
    public void The_most_valuable_set_has_its_published_value(string name, string data, int width, int height, bool turn, int optimum)
    {
        var rows = data.Split('|').Select(row => Array.ConvertAll(row.Trim().Split(' '), number => int.Parse(number, null))).ToArray();
        var job = Job(rows, width, height, turn);
        var sets = PackableSets.List(job, 200_000_000, CancellationToken.None)!;

        sets.Complete.Should().BeTrue(name);
        sets.Sets.Max(set => Value(job, rows, set)).Should().Be(optimum, name);
    }

    [Fact]
    public void A_list_that_ran_out_of_room_says_so()
    {
        var rows = new[] { new[] { 3, 2, 5 }, new[] { 2, 2, 5 }, new[] { 1, 4, 5 } };

        PackableSets.List(Job(rows, 15, 10, true), 100, CancellationToken.None)!.Complete.Should().BeFalse();
    }

    private static SheetJob Job(int[][] rows, int width, int height, bool turn) => SheetJob.From(new SheetCutRequest
    {
        Pieces =
        [
            .. rows.Select((row, i) => new SheetPiece(
                $"{i}",
                Length.FromMillimeters(row[0]),
                Length.FromMillimeters(row[1]),
                row.Length > 2 ? row[2] : width * height / (row[0] * row[1]),
                turn)),
        ],
        Stock = [new StockSheet("sheet", Length.FromMillimeters(width), Length.FromMillimeters(height), 1)],
    });

    private static int Value(SheetJob job, int[][] rows, PackableSet set) => set.Counts
        .Select((count, kind) => Values(rows, job.Kinds[kind]).OrderDescending().Take(count).Sum())
        .Sum();

    /// <summary>Values of a kind's pieces: rows of equal size are one kind to the planner, whatever they are worth.</summary>
    private static IEnumerable<int> Values(int[][] rows, SheetKind kind) => kind.Pieces
        .Select(piece => rows[int.Parse(piece.Label, null)])
        .Select(row => row.Length > 3 ? row[3] : row[0] * row[1]);
}
