using StudioKit.Web.Outdoors;

namespace StudioKit.Web.Tests.Outdoors;

public sealed class HoldTimerTests
{
    private readonly Watch _watch = new();
    private readonly Notes _notes = new();

    [Fact]
    public async Task The_time_is_over_at_the_limit_and_not_before()
    {
        var timer = new HoldTimer(_watch, _notes);
        await timer.BeginAsync("common frog", TimeSpan.FromMinutes(5));

        _watch.Now += TimeSpan.FromSeconds(299);
        timer.IsOver.Should().BeFalse();
        timer.Left.Should().Be(TimeSpan.FromSeconds(1));
        _watch.Now += TimeSpan.FromSeconds(1);

        timer.IsOver.Should().BeTrue();
    }

    [Fact]
    public async Task A_lost_tab_does_not_stop_the_count()
    {
        await new HoldTimer(_watch, _notes).BeginAsync("common frog", TimeSpan.FromMinutes(5));
        _watch.Now += TimeSpan.FromMinutes(6);

        var again = new HoldTimer(_watch, _notes);
        await again.ResumeAsync();

        again.Animal.Should().Be("common frog");
        again.Held.Should().Be(TimeSpan.FromMinutes(6));
        again.IsOver.Should().BeTrue();
    }

    [Fact]
    public async Task An_animal_that_is_home_is_not_counted_again()
    {
        var timer = new HoldTimer(_watch, _notes);
        await timer.BeginAsync("raft spider", TimeSpan.FromMinutes(15));
        await timer.EndAsync();

        await timer.ResumeAsync();

        timer.IsHolding.Should().BeFalse();
    }

    [Theory]
    [InlineData("yesterday\t300\tfrog")]
    [InlineData("2027-05-14T10:00:00.0000000+00:00\tlong\tfrog")]
    [InlineData("2027-05-14T10:00:00.0000000+00:00\tNaN\tfrog")]
    [InlineData("frog")]
    public async Task A_note_that_makes_no_sense_is_left_alone(string note)
    {
        await _notes.KeepAsync("held", note);
        var timer = new HoldTimer(_watch, _notes);

        await timer.ResumeAsync();

        timer.IsHolding.Should().BeFalse();
    }

    [Fact]
    public async Task A_clock_set_back_counts_as_no_time()
    {
        var timer = new HoldTimer(_watch, _notes);
        await timer.BeginAsync("frog", TimeSpan.FromMinutes(5));

        _watch.Now -= TimeSpan.FromHours(1);

        timer.Held.Should().Be(TimeSpan.Zero);
    }

    private sealed class Watch : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2027, 5, 14, 10, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }

    private sealed class Notes : IDevice
    {
        private readonly Dictionary<string, string> _kept = new(StringComparer.Ordinal);

        public Task KeepAsync(string name, string note)
        {
            _kept[name] = note;
            return Task.CompletedTask;
        }

        public Task<string> KeptAsync(string name) => Task.FromResult(_kept.GetValueOrDefault(name, ""));

        public Task<bool> StayAwakeAsync(bool awake) => Task.FromResult(awake);

        public Task BuzzAsync() => Task.CompletedTask;
    }
}
