using System.Text.Json;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

/// <summary>The worker's room asked without a browser: questions and answers pass through JSON as they do there.</summary>
internal sealed class AskedEngine
{
    private readonly EngineRoom _room = new(new Progress<string>());

    public static string FenEdge { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "kits", "fen-edge.yaml"));

    public TAnswer Ask<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request) =>
        JsonSerializer.Deserialize(_room.Answer(question.Kind, JsonSerializer.Serialize(request, question.Request)), question.Answer)!;

    public PlanAnswer Plan(string text) => Ask(EngineQuestions.Plan, new PlanRequest(text, "fen-edge.yaml"));
}
