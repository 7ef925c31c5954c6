using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Asks the worker by messages.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class WorkerEngine : IEngine
{
    private const string Module = "engine-link";

    private readonly Lazy<Task> _loaded = PageScript.Of(Module);

    /// <inheritdoc/>
    public async Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
        where TAnswer : class
    {
        await _loaded.Value;
        try
        {
            var answer = await Ask(question.Kind, question.Lane, JsonSerializer.Serialize(request, question.Request), step => progress?.Report(step));
            return answer is null ? null : JsonSerializer.Deserialize(answer, question.Answer);
        }
        catch (JSException fault)
        {
            throw new EngineFaultException(fault.Message, fault);
        }
    }

    /// <inheritdoc/>
    public async Task SaveAsync(string name)
    {
        await _loaded.Value;
        try
        {
            await Save(name);
        }
        catch (JSException fault)
        {
            throw new EngineFaultException(fault.Message, fault);
        }
    }

    [JSImport("save", Module)]
    private static partial Task Save(string name);

    [JSImport("ask", Module)]
    private static partial Task<string?> Ask(string kind, string? lane, string request, [JSMarshalAs<JSType.Function<JSType.String>>] Action<string> progress);
}
