using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Asks the worker where a failure is to be said in its place, and not to end the page.</summary>
public static class EngineAsking
{
    /// <summary>Asks a question; a failure of the worker comes back as words.</summary>
    /// <param name="engine">The worker.</param>
    /// <param name="question">Its kind.</param>
    /// <param name="request">What is asked.</param>
    /// <returns>The answer, none where a newer question took its place or the worker failed; and what it failed at, empty where it did not.</returns>
    public static async Task<(TAnswer? Answer, string Fault)> TryAsync<TRequest, TAnswer>(this IEngine engine, EngineQuestion<TRequest, TAnswer> question, TRequest request)
        where TAnswer : class
    {
        ArgumentNullException.ThrowIfNull(engine);
        try
        {
            return (await engine.AskAsync(question, request), "");
        }
        catch (EngineFaultException fault)
        {
            return (null, $"The planner stumbled: {fault.Message}");
        }
    }
}
