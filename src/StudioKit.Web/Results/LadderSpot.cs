namespace StudioKit.Web.Results;

/// <summary>A cell of a measured map.</summary>
/// <param name="Band">Its kind: <c>dark</c>, <c>under</c>, <c>white</c>, <c>bright</c> or <c>unknown</c>.</param>
/// <param name="Sign">A sign for the kind, told apart without colour.</param>
/// <param name="Margin">Its margin in words.</param>
public sealed record LadderSpot(string Band, string Sign, string Margin);
