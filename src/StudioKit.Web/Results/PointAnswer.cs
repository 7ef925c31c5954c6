namespace StudioKit.Web.Results;

/// <summary>What is known of a place of the panel.</summary>
/// <param name="Place">The place in words.</param>
/// <param name="Said">What is most worth saying of it in the framing that was asked about.</param>
/// <param name="Framings">Each framing.</param>
/// <param name="Account">Where the light goes on its way there, line by line.</param>
/// <param name="Total">What the account comes to.</param>
public sealed record PointAnswer(string Place, string Said, IReadOnlyList<PointLine> Framings, IReadOnlyList<AccountLine> Account, string Total);
