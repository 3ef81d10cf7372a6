namespace Orlop.Boat.Validation;

/// <summary>One thing that is wrong in a boat: where, what was found, what is allowed.</summary>
/// <param name="Path">The thing and the JSON pointer inside it: <c>things[12] 'winch-feed' /cores/0/lengthM</c>.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Allowed">What may stand there.</param>
/// <param name="Message">What is wrong, in a sentence.</param>
public sealed record Problem(string Path, string Found, string Allowed, string Message)
{
    public override string ToString() => $"{Path}: {Message} Found: {Found}. Allowed: {Allowed}.";
}
