using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Outdoors;
using StudioKit.Web.Results;
using StudioKit.Web.Tests.Engine;
using StudioKit.Web.Views;

namespace StudioKit.Web.Tests.Editing;

/// <summary>A worker that fails at a question is told of where the question was asked; the page goes on.</summary>
public sealed class StumblingTests
{
    private const string Word = "out of memory";

    [Fact]
    public async Task The_list_of_sheets_says_that_they_cannot_be_told()
    {
        var services = new ServiceCollection().AddSingleton<IEngine>(new Stumbling()).AddSingleton<Desk>().BuildServiceProvider();
        await services.GetRequiredService<Desk>().OpenAsync(new KitDocument("fen.yaml", "kit: Fen"));
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var parameters = ParameterView.FromDictionary(new Dictionary<string, object?> { ["Plan"] = new PlanAnswer("abc", "Fen", new VerdictLine(Standing.Stands, "", "", ""), []) });

        var page = await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<SheetList>(parameters)).ToHtmlString());

        page.Should().Contain(Word);
    }

    [Fact]
    public async Task A_field_that_cannot_be_written_says_so()
    {
        var engine = new Stumbling();
        var desk = new Desk(engine);
        await desk.OpenAsync(new KitDocument("fen.yaml", "kit: Fen"));

        (await new FormDesk(engine, desk).EditAsync(FormEditKind.Write, "kit", [new FormValue("", "Bog")])).Should().Contain(Word);
        desk.EngineFault.Should().Contain(Word);
    }

    [Fact]
    public async Task A_correction_that_cannot_be_taken_up_stays_on_the_device_and_is_told_of()
    {
        var (engine, device) = (new Stumbling(), new Notes());
        device.Kept["corrections"] = """{"texts":["correction-of: Fen"]}""";
        var corrections = new Corrections(engine, device, new Desk(engine));

        await corrections.RestoreAsync();
        await corrections.RemoveAsync("Fen");

        corrections.Faults.Should().ContainSingle().Which.Should().Contain(Word);
        device.Kept["corrections"].Should().Contain("correction-of: Fen");
    }

    [Fact]
    public async Task A_search_for_what_mends_a_check_says_that_it_failed()
    {
        var engine = new Stumbling();
        var desk = new Desk(engine);
        await desk.OpenAsync(new KitDocument("fen.yaml", "kit: Fen"));
        var mends = new MendDesk(engine, desk);

        await mends.LookAsync("PanelSize");

        mends.Of("PanelSize")!.Fault.Should().Contain(Word);
    }

    // Views have nobody above them who catches: each question of theirs comes back with a failure in words.
    [Fact]
    public void No_view_asks_without_a_place_for_what_goes_wrong()
    {
        var folder = Path.Combine(Asked.Repository(), "src", "StudioKit.Web");
        var asking = Directory.EnumerateFiles(Path.Combine(folder, "Views"), "*.razor")
            .Select(file => (Name: Path.GetFileName(file), Text: File.ReadAllText(file)))
            .Where(file => file.Text.Contains("Engine.AskAsync(", StringComparison.Ordinal) || file.Text.Contains("Engine.SaveAsync(", StringComparison.Ordinal));

        asking.Where(file => !file.Text.Contains("catch (EngineFaultException", StringComparison.Ordinal)).Select(file => file.Name).Should().BeEmpty();
    }

    private sealed class Stumbling : IEngine
    {
        public Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
            where TAnswer : class => Task.FromException<TAnswer?>(new EngineFaultException(Word));

        public Task SaveAsync(string name) => Task.FromException(new EngineFaultException(Word));
    }

    private sealed class Notes : IDevice
    {
        public Dictionary<string, string> Kept { get; } = new(StringComparer.Ordinal);

        public Task KeepAsync(string name, string note)
        {
            Kept[name] = note;
            return Task.CompletedTask;
        }

        public Task<string> KeptAsync(string name) => Task.FromResult(Kept.GetValueOrDefault(name, ""));

        public Task<bool> StayAwakeAsync(bool awake) => Task.FromResult(false);

        public Task BuzzAsync() => Task.CompletedTask;
    }
}
