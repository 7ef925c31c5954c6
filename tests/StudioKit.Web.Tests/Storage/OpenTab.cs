using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;
using StudioKit.Web.Storage;

namespace StudioKit.Web.Tests.Storage;

/// <summary>A page in a tab of a shared device, without a browser: its desk, its keeper, and an engine that plans nothing or dies over a kit.</summary>
internal sealed class OpenTab : IEngine
{
    public const string Deadly = "deadly";

    private OpenTab(SharedDevice device)
    {
        Own = device.Tab();
        Desk = new Desk(this);
        Keeper = new KitKeeper(Desk, Own, Own);
        Keeper.Noticed = Notices.Add;
    }

    public DeviceTab Own { get; }

    public Desk Desk { get; }

    public KitKeeper Keeper { get; }

    public IList<KeepingNotice> Notices { get; } = [];

    public string Text => Desk.Kit?.Text ?? "";

    public static async Task<OpenTab> OnAsync(SharedDevice device)
    {
        var tab = new OpenTab(device);
        var start = tab.Keeper.StartAsync(() => Task.FromResult(("fen.yaml", "fen")));
        if (await Task.WhenAny(start, Task.Delay(TimeSpan.FromSeconds(1))) == start && await start is { } notice)
        {
            tab.Notices.Add(notice);
        }

        return tab;
    }

    public Task WriteAsync(string text) => Desk.ChangeAsync(kit => kit.Change(text));

    public Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
        where TAnswer : class => (object?)request switch
        {
            // A page that dies never gets its answer.
            PlanRequest { Text: Deadly } => new TaskCompletionSource<TAnswer?>().Task,
            PlanRequest plan => Task.FromResult((TAnswer?)(object)new PlanAnswer(plan.Text, "", new VerdictLine(Standing.Stands, "", "", ""), [])),
            _ => Task.FromResult<TAnswer?>(null),
        };

    public Task SaveAsync(string name) => Task.CompletedTask;
}
