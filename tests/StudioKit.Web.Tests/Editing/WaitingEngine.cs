using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Editing;

/// <summary>An engine whose answers to one kind of question come when the test lets them; those to all others come at once.</summary>
internal sealed class WaitingEngine(string kind) : IEngine
{
    private readonly Engine.Asked _room = new();
    private readonly Queue<Action> _waiting = [];

    /// <summary>Whether answers wait to be let go.</summary>
    public bool IsHeld { get; set; }

    /// <summary>Lets the oldest answer that waits come.</summary>
    public void LetOneCome() => _waiting.Dequeue()();

    public Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
        where TAnswer : class
    {
        if (!IsHeld || question.Kind != kind)
        {
            return Task.FromResult<TAnswer?>(_room.For(question, request));
        }

        var come = new TaskCompletionSource<TAnswer?>();
        _waiting.Enqueue(() => come.SetResult(_room.For(question, request)));
        return come.Task;
    }

    public Task SaveAsync(string name) => Task.CompletedTask;
}
