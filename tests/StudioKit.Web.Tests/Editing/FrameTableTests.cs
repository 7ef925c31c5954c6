using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;
using StudioKit.Web.Storage;

namespace StudioKit.Web.Tests.Editing;

/// <summary>What lies on the table of test frames never stands beside an answer to something else.</summary>
public sealed class FrameTableTests : IDisposable
{
    private readonly Answers _engine = new();
    private readonly Desk _desk;
    private readonly FrameTable _table;

    public FrameTableTests()
    {
        _desk = new Desk(_engine);
        _table = new FrameTable(_engine, _desk, new NoPicker(), TimeProvider.System);
    }

    public void Dispose() => _table.Dispose();

    [Fact]
    public async Task A_ladder_counts_no_more_when_the_power_of_one_of_its_frames_is_corrected()
    {
        await LadderAsync();

        _table.Frames[1].Power = "1/16";
        await _table.TellAsync(_table.Frames[1]);

        _table.Ladder.Should().BeNull();
    }

    [Fact]
    public async Task A_ladder_counts_no_more_when_a_frame_is_added_or_taken_off()
    {
        await LadderAsync();
        await _table.AddAsync("d", "panel-1-64.jpg");
        _table.Ladder.Should().BeNull();

        await _table.MeasureAsync();
        _table.Ladder.Should().NotBeNull();
        await _table.RemoveAsync(_table.Frames[0]);
        _table.Ladder.Should().BeNull();
    }

    [Fact]
    public async Task A_ladder_takes_three_frames_that_name_their_power()
    {
        await _desk.OpenAsync(new KitDocument("fen.yaml", "kit: Fen"));
        await _table.AddAsync("a", "panel-1-4.jpg");
        await _table.AddAsync("b", "panel-1-8.jpg");
        _table.IsLadder.Should().BeFalse();
        await _table.AddAsync("c", "panel-1-16.jpg");
        _table.IsLadder.Should().BeTrue();

        _table.Frames[2].Power = "";
        _table.IsLadder.Should().BeFalse();
    }

    private async Task LadderAsync()
    {
        await _desk.OpenAsync(new KitDocument("fen.yaml", "kit: Fen"));
        foreach (var key in new[] { "a", "b", "c" })
        {
            await _table.AddAsync(key, $"panel-{key}.jpg");
        }

        await _table.MeasureAsync();
        _table.Ladder.Should().NotBeNull();
    }

    // Any picture is read, any frame is right, any ladder measures something.
    private sealed class Answers : IEngine
    {
        public Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
            where TAnswer : class => Task.FromResult(question.Kind switch
            {
                "read-frame" => new ReadPicture("6000 × 4000 pixels", "", "1/8", 0, 0, []),
                "frame" => new FrameAnswer(Standing.Stands, "", [], []),
                "ladder" => new LadderAnswer("", [], "", []),
                _ => (object?)null,
            } as TAnswer);

        public Task SaveAsync(string name) => Task.CompletedTask;
    }

    private sealed class NoPicker : IPicturePicker
    {
        public Task WatchAsync(string place, Action<string, string> picked) => Task.CompletedTask;

        public Task ForgetAsync(string key) => Task.CompletedTask;

        public Task PaintAsync(string canvas, string key, int width, int height) => Task.CompletedTask;

        public Task SaveTextAsync(string name, string text) => Task.CompletedTask;
    }
}
