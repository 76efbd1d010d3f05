# The second opinion of R (4.2.2 when these were made): Student t, Grubbs' critical values, sample
# deviations, the studentized range and F. Run from the top folder:
#   Rscript tests/second-opinion/from-r.R
# It writes JSON into tests/second-opinion/fixtures. Nothing of ours is used here.
folder <- "tests/second-opinion/fixtures"
figure <- function(x) sprintf("%.17g", x)
list_of <- function(x) paste0("[", paste(x, collapse = ", "), "]")
write_rows <- function(name, head, rows) {
  text <- paste0("{\"columns\": ", list_of(sprintf("\"%s\"", head)), ",\n\"rows\": [\n",
                 paste(vapply(rows, list_of, ""), collapse = ",\n"), "\n]}\n")
  cat(text, file = file.path(folder, name))
}

# t that |T| exceeds with probability p, degrees of freedom 1 to 120
chances <- c(0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 1e-3, 1e-4, 1e-5, 1e-6)
rows <- list()
for (nu in 1:120) for (p in chances)
  rows[[length(rows) + 1]] <- c(nu, figure(p), figure(qt(p / 2, nu, lower.tail = FALSE)))
write_rows("student-t.json", c("freedom", "outside", "t"), rows)

# Pr[|T| > t]
rows <- list()
for (nu in c(1:12, 18, 30, 61, 98, 120)) for (t in c(0.1, 0.5, 1, 1.9, 3, 6, 15, 40, 1000))
  rows[[length(rows) + 1]] <- c(nu, figure(t), figure(2 * pt(t, nu, lower.tail = FALSE)))
write_rows("student-tail.json", c("freedom", "t", "outside"), rows)

# Grubbs' two-sided critical values
rows <- list()
for (n in 3:100) for (alpha in c(0.10, 0.05, 0.01)) {
  t2 <- qt(alpha / (2 * n), n - 2, lower.tail = FALSE)^2
  rows[[length(rows) + 1]] <- c(n, figure(alpha), figure((n - 1) / sqrt(n) * sqrt(t2 / (n - 2 + t2))))
}
write_rows("grubbs-critical.json", c("count", "alpha", "critical"), rows)

# 500 random sets of readings as a bench would write them, with their mean and sample deviation
set.seed(20260101)
rows <- list()
for (set in 1:500) {
  n <- sample(2:12, 1)
  middle <- 10^runif(1, -1, 2)
  readings <- pmax(round(rnorm(n, middle, middle * 10^runif(1, -3, -0.7)), 2), 0.01)
  rows[[set]] <- c(list_of(sprintf("%.2f", readings)), figure(mean(readings)), figure(sd(readings)))
}
write_rows("sample-deviations.json", c("readings", "mean", "deviation"), rows)

# the range of n normal values, in standard deviations, that 95 of 100 sets stay within
rows <- lapply(2:10, function(n) c(n, figure(qtukey(0.95, n, Inf))))
write_rows("range-factors.json", c("count", "factor"), rows)

# Dixon's r10, two-sided: the smallest value x and the range v of n normal values; all others lie
# below x + (1 - R) v. Exact by integration (McBane 2006).
beyond <- function(R, n) {
  over <- function(v) vapply(v, function(v) integrate(function(x)
    dnorm(x) * dnorm(x + v) * (pnorm(x + (1 - R) * v) - pnorm(x))^(n - 2), -12, 12,
    rel.tol = 1e-10, subdivisions = 500)$value, 0)
  n * (n - 1) * integrate(over, 0, 16, rel.tol = 1e-9, subdivisions = 500)$value
}
rows <- lapply(3:10, function(n) c(n, vapply(c(0.10, 0.05, 0.01), function(alpha)
  figure(uniroot(function(R) beyond(R, n) - alpha / 2, c(0.2, 0.9999), tol = 1e-9)$root), "")))
write_rows("dixon-critical.json", c("count", "at90", "at95", "at99"), rows)

# Pr[F > f], degrees of freedom odd and even, small and large
rows <- list()
for (nu1 in c(1:9, 12, 19, 40)) for (nu2 in c(1:9, 16, 20, 25, 40, 61, 120, 1000))
  for (f in c(0.05, 0.7, 1, 2.124, 4.5, 30))
    rows[[length(rows) + 1]] <- c(nu1, nu2, figure(f), figure(pf(f, nu1, nu2, lower.tail = FALSE)))
write_rows("f-tail.json", c("first", "second", "f", "beyond"), rows)
