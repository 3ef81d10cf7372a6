namespace Orlop.Hull.Floating;

/// <summary>Which of draught, trim and heel the boat finds for herself.</summary>
internal enum Freedom
{
    DraughtOnly = 1,
    DraughtAndTrim = 2,
    All = 3,
}
