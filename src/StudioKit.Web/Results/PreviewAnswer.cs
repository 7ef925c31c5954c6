namespace StudioKit.Web.Results;

/// <summary>How a framing would look with something of the studio moved; a preview, which a plan takes the place of.</summary>
/// <param name="Hash">Hash of the kit that something was moved in.</param>
/// <param name="Studio">The studio with that one framing; none where nothing can be previewed, as after the worker was started anew.</param>
/// <param name="Card">Its card; none where there is none.</param>
public sealed record PreviewAnswer(string Hash, StudioPicture? Studio, CardFace? Card);
