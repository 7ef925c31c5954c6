namespace StudioKit.Web.Results;

/// <summary>One flash of a card.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Role">What it does, in a word.</param>
/// <param name="Power">Power to set, both ways of the trade.</param>
/// <param name="Distance">Where it stands.</param>
/// <param name="Modifier">What is before it; empty where it is bare.</param>
public sealed record CardLight(string Flash, string Role, string Power, string Distance, string Modifier);
