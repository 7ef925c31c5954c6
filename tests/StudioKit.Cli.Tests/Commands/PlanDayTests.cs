using System.Text.Json;

namespace StudioKit.Cli.Tests.Commands;

/// <summary>The day that <c>plan</c> makes for a date and a place.</summary>
public sealed class PlanDayTests
{
    private static readonly string Heath = Repository.Kit("heath-ultralight.yaml");

    [Fact]
    public void Without_a_date_no_day_is_planned()
    {
        Root(CommandRun.Of("plan", Heath, "--json")).TryGetProperty("day", out _).Should().BeFalse();
        CommandRun.Of("plan", Heath).Output.Should().NotContain("shade falls to");
    }

    // Golden on 17 October 2003 at UTC - 7 h: sunrise 06:12:43 (Reda and Andreas 2004).
    [Theory]
    [InlineData("39.742476", "-105.1786", "-7")]
    [InlineData("39.742476° N", "105.1786° W", "-7 h")]
    public void A_date_and_a_place_plan_the_day_there(string latitude, string longitude, string offset)
    {
        var day = Root(CommandRun.Of("plan", Heath, "--date", "2003-10-17", "--latitude", latitude, "--longitude", longitude, "--utc-offset", offset, "--json")).GetProperty("day");

        day.GetProperty("date").GetString().Should().Be("2003-10-17");
        day.GetProperty("longitudeDeg").GetDouble().Should().BeApproximately(-105.1786, 1e-9);
        day.GetProperty("events").EnumerateArray().Single(of => of.GetProperty("kind").GetString() == "sunrise").GetProperty("minute").GetInt32().Should().Be((6 * 60) + 13);
    }

    [Fact]
    public void A_date_alone_takes_the_place_of_the_kit()
    {
        var day = Root(CommandRun.Of("plan", Repository.Kit("fen-edge.yaml"), "--date", "2026-12-14", "--json")).GetProperty("day");

        (day.GetProperty("date").GetString(), day.GetProperty("latitudeDeg").GetDouble(), day.GetProperty("utcOffsetS").GetDouble()).Should().Be(("2026-12-14", 52.3, 7200));
    }

    // The clock of one place is not that of another: 105° west of Greenwich it is seven hours behind.
    [Fact]
    public void Another_longitude_brings_another_clock()
    {
        var day = Root(CommandRun.Of("plan", Repository.Kit("fen-edge.yaml"), "--longitude", "105 W", "--json"));
        var moved = Root(CommandRun.Of("plan", Repository.Kit("fen-edge.yaml"), "--longitude", "105° W", "--json")).GetProperty("day");

        day.TryGetProperty("day", out _).Should().BeFalse("a number, a blank and a letter are no angle");
        (moved.GetProperty("utcOffsetS").GetDouble(), moved.GetProperty("utcOffsetGiven").GetBoolean()).Should().Be((-7 * 3600, false));
    }

    // What is printed is printed for another day, and its content says so.
    [Fact]
    public void Sheets_take_a_day_from_the_command_line_too()
    {
        using var folder = new TemporaryFolder();

        var run = CommandRun.Of("sheets", Heath, "--out", folder.File("out"), "--cards", "A6", "--day", "2026-06-14", "--latitude", "52.3", "--longitude", "5.1");

        run.Output.Should().Contain("day-plan.pdf", "the kit alone has no date").And.Contain("light-places.csv");
    }

    [Fact]
    public void Another_day_is_another_content()
    {
        string Hash(params string[] options) => Root(CommandRun.Of(["plan", Repository.Kit("fen-edge.yaml"), "--json", .. options])).GetProperty("contentHash").GetString()!;

        Hash("--date", "2026-12-14").Should().NotBe(Hash()).And.NotBe(Hash("--date", "2026-12-15"));
    }

    // A day changes what is planned and not how a kit reads.
    [Fact]
    public void A_check_takes_a_day_where_it_plans()
    {
        CommandRun.Of("check", Heath, "--date", "2026-06-14", "--latitude", "52.3", "--longitude", "5.1").Should().Match<CommandRun>(run => run.ExitCode == 2 && run.Error.Contains("--plan"));
        CommandRun.Of("check", Heath, "--plan", "--date", "2026-06-14", "--latitude", "52.3", "--longitude", "5.1").ExitCode.Should().NotBe(2);
    }

    [Fact]
    public void A_plan_prints_where_each_light_stands()
    {
        var text = CommandRun.Of("plan", Repository.Kit("fen-edge.yaml")).Output;

        text.Should().Contain("where the lights stand").And.Contain("half past").And.Contain("fairly");
    }

    [Theory]
    [InlineData("--latitude", "--date", "2026-06-14")]
    [InlineData("--date", "--latitude", "52.3", "--longitude", "5.1")]
    [InlineData("--longitude", "--date", "2026-06-14", "--latitude", "52.3")]
    [InlineData("out of range", "--date", "2026-06-14", "--latitude", "95", "--longitude", "5.1")]
    [InlineData("out of range", "--date", "2026-06-14", "--latitude", "52.3", "--longitude", "5.1", "--utc-offset", "20")]
    [InlineData("2026-06-14", "--date", "14.6.2026", "--latitude", "52.3", "--longitude", "5.1")]
    public void Half_a_day_is_refused_with_what_is_missing(string said, params string[] options)
    {
        var run = CommandRun.Of(["plan", Heath, .. options]);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(said);
    }

    private static JsonElement Root(CommandRun run) => run.Output.Length == 0 ? JsonDocument.Parse("{}").RootElement : JsonDocument.Parse(run.Output).RootElement;
}
