using System.Text.Json.Serialization.Metadata;

namespace StudioKit.Web.Results;

/// <summary>A kind of question that the page asks of its worker.</summary>
/// <typeparam name="TRequest">What is asked.</typeparam>
/// <typeparam name="TAnswer">What comes back.</typeparam>
/// <param name="Kind">Its name in messages.</param>
/// <param name="Request">How what is asked is written.</param>
/// <param name="Answer">How what comes back is written.</param>
/// <param name="Lane">Of questions that wait in one lane only the newest is answered; null where each is.</param>
public sealed record EngineQuestion<TRequest, TAnswer>(string Kind, JsonTypeInfo<TRequest> Request, JsonTypeInfo<TAnswer> Answer, string? Lane = null);
