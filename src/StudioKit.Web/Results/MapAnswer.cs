namespace StudioKit.Web.Results;

/// <summary>What a framing sees, place by place.</summary>
/// <param name="Hash">Hash of the kit.</param>
/// <param name="Framing">Name of the framing.</param>
/// <param name="Map">What it sees; none where it sees nothing, or after the worker was started anew.</param>
public sealed record MapAnswer(string Hash, string Framing, FramingMap? Map);
