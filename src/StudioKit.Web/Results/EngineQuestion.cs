using System.Text.Json.Serialization.Metadata;

namespace StudioKit.Web.Results;

/// <summary>A kind of question that the page asks of its worker.</summary>
/// <typeparam name="TRequest">What is asked.</typeparam>
/// <typeparam name="TAnswer">What comes back.</typeparam>
/// <remarks>How something is written is looked up when the first is: describing all that can be asked took a tenth of a start.</remarks>
/// <param name="kind">Its name in messages.</param>
/// <param name="request">How what is asked is written.</param>
/// <param name="answer">How what comes back is written.</param>
/// <param name="lane">Of questions that wait in one lane only the newest is answered; null where each is.</param>
public sealed class EngineQuestion<TRequest, TAnswer>(string kind, Func<JsonTypeInfo<TRequest>> request, Func<JsonTypeInfo<TAnswer>> answer, string? lane = null)
{
    /// <summary>Its name in messages.</summary>
    public string Kind => kind;

    /// <summary>How what is asked is written.</summary>
    public JsonTypeInfo<TRequest> Request => request();

    /// <summary>How what comes back is written.</summary>
    public JsonTypeInfo<TAnswer> Answer => answer();

    /// <summary>Of questions that wait in one lane only the newest is answered; null where each is.</summary>
    public string? Lane => lane;
}
