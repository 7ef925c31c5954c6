using StudioKit.Planning.Stations;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Stations;

/// <summary>What studios that stand side by side share.</summary>
public sealed class StationsPlannerTests
{
    private const string Stock =
        """
        stock:
          lengths: [{length: 2 m, price: 3.20}, {length: 3 m, price: 4.40}]
          sheets: [{material: opal acrylic, size: 1000 mm x 700 mm, price: 24}]
          STUDIOS

        """;

    private const string Radios =
        """
        triggers:
          - {name: sender, kind: radio-sender, channel: CHANNEL}
          - {name: receiver, kind: radio-receiver, count: 2}

        """;

    /// <summary>A kit that is built for two studios has its cuts planned for both: another way to the same stock.</summary>
    [Fact]
    public void Two_studios_of_one_kit_are_cut_together_as_a_batch_of_two()
    {
        var (one, batch) = (PlanOf(""), PlanOf("studios: 2"));

        var shared = StationsPlanner.Of([one, one], new PlanningServices());

        shared.Stations.Should().Equal("Cottongrass mire", "Cottongrass mire (2)");
        var pipe = shared.Cuts.Single(cut => cut.Material == one.Workshop!.PipeName);
        pipe.Apart.Should().Be(new StockTaken(2 * one.Workshop!.PipeCuts.TotalBars, 2 * one.Workshop.PipeCuts.TotalCost));
        pipe.Together.Cost.Should().Be(Math.Min(pipe.Apart.Cost!.Value, batch.Workshop!.PipeCuts.TotalCost), "the quick planner may do worse for both than twice for one");

        // By hand: two panels of 500 mm by 400 mm lie side by side on a sheet of 1000 mm by 700 mm only where the saw takes nothing; turned, 400 and 500 mm of 1000 mm leave room for it.
        var sheet = shared.Cuts.Single(cut => cut != pipe);
        sheet.Apart.Should().Be(new StockTaken(2, 48));
        sheet.Together.Should().Be(new StockTaken(1, 24));
        shared.Saved.Should().Be(24 + pipe.Apart.Cost.Value - pipe.Together.Cost!.Value);
    }

    [Fact]
    public void Every_piece_of_two_studios_of_one_kit_is_alike_and_one_set_of_tools_does()
    {
        var one = PlanOf("");

        var shared = StationsPlanner.Of([one, one], new PlanningServices());

        shared.Alike.Where(piece => piece.Width is null).Sum(piece => piece.Fewest).Should().Be(one.Frame!.Geometry.Members.Count);
        Sheets(shared).Should().Contain((500.0, 400.0), "the panel is 500 mm by 400 mm in both");
        shared.Tools.Select(tool => (tool.Tool.Kind, tool.Tool.Size)).Should().BeEquivalentTo(one.Workshop!.Tools.Select(tool => (tool.Kind, tool.Size)));
    }

    [Fact]
    public void A_spare_fits_only_stations_that_have_the_piece()
    {
        var (narrow, wide) = (PlanOf(""), PlanOf("", panel: "width: 560 mm, depth: 400 mm"));

        var shared = StationsPlanner.Of([narrow, wide], new PlanningServices());

        var lengths = narrow.Frame!.Pieces.Select(piece => piece.Rounded.Millimeters).Intersect(wide.Frame!.Pieces.Select(piece => piece.Rounded.Millimeters));
        shared.Alike.Where(piece => piece.Width is null).Select(piece => piece.Length.Millimeters).Should().BeEquivalentTo(lengths, "legs and sides are the same, fronts and backs are not");
        Sheets(shared).Should().NotContain(sides => sides.Long >= 500, "one panel is wider than the other");
    }

    [Fact]
    public void Stations_on_one_radio_channel_are_told_and_given_channels_that_nobody_uses()
    {
        var plans = new[] { 1, 5, 5, 5 }.Select(channel => PlanOf("", Radios.Replace("CHANNEL", channel.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal))).ToList();

        var clash = StationsPlanner.Of(plans, new PlanningServices()).Channels.Single();

        clash.Channel.Should().Be(5);
        clash.Stations.Should().HaveCount(3);
        clash.Free.Should().Equal(2, 3);
    }

    [Fact]
    public void One_studio_shares_with_nobody() => FluentActions.Invoking(() => StationsPlanner.Of([PlanOf("")], new PlanningServices())).Should().Throw<ArgumentException>();

    private static List<(double Long, double Short)> Sheets(StationsPlan shared) =>
        [.. shared.Alike.Where(piece => piece.Width is not null).Select(piece => (piece.Length.Millimeters, piece.Width!.Value.Millimeters))];

    private static Plan PlanOf(string studios, string more = "", string panel = "width: 500 mm, depth: 400 mm") =>
        HandKit.Plan(HandKit.White + Stock.Replace("STUDIOS", studios, StringComparison.Ordinal) + more, panel: panel + ", material: opal acrylic");
}
