using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Where the page gets its answers: a worker with a runtime of its own, so that the page never stands still.</summary>
public interface IEngine
{
    /// <summary>Asks a question.</summary>
    /// <param name="question">Its kind.</param>
    /// <param name="request">What is asked.</param>
    /// <param name="progress">Told each step in a word or two; none where nobody watches.</param>
    /// <returns>The answer; none where a newer question in the same lane took its place.</returns>
    /// <exception cref="EngineFaultException">The worker failed.</exception>
    public Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
        where TAnswer : class;

    /// <summary>Takes a file that was made and hands it to the visitor as a download.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="EngineFaultException">No such file was made.</exception>
    public Task SaveAsync(string name);
}
